#include "app/desk/window/mend_panel.hpp"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <algorithm>

namespace wrapgauge {
namespace {

using Steps = std::vector<MendStep>;

struct MendWords {
  Q_DECLARE_TR_FUNCTIONS(wrapgauge::MendPanel)
};

// Of the kinds of step, in the order of the variant.
constexpr int kPlaceInOrder[] = {0, 1, 2, 3, 7, 5, 4, 6};

// The first step of that kind, as it is or to be changed; null: there is none.
template <class Step>
constexpr auto the_step = [](auto& steps) {
  decltype(std::get_if<Step>(&steps.front())) found = nullptr;
  for (auto& step : steps)
    if (!found) found = std::get_if<Step>(&step);
  return found;
};

void add_in_order(Steps& steps, const MendStep& step) {
  const auto later = [&](const MendStep& other) {
    return kPlaceInOrder[other.index()] > kPlaceInOrder[step.index()];
  };
  steps.insert(std::find_if(steps.begin(), steps.end(), later), step);
}

template <class Step>
void add_step(FieldForm<Steps>& rows, const QString& title, const Step& fresh = {}) {
  rows.box_by(
      FieldText(title), [](const Steps& steps) { return the_step<Step>(steps) != nullptr; },
      [fresh](Steps& steps, bool on) {
        std::erase_if(steps, [](const MendStep& step) { return std::holds_alternative<Step>(step); });
        if (on) add_in_order(steps, fresh);
      });
}

// A number of a step, to be placed below it; not seen while there is no such step.
template <class Step, class Value, class One>
NumberField* add_number(FieldForm<Steps>& rows, const QString& name, const FieldUnit<One>& unit,
                        const NumberField::Range& range, Value Step::*member) {
  return rows.number(FieldText({}, name), unit, range, [member](auto& steps) {
    auto* step = the_step<Step>(steps);
    return step ? &(step->*member) : nullptr;
  });
}

void place_below(FieldForm<Steps>& rows, std::initializer_list<QWidget*> fields) {
  auto* row = new QHBoxLayout;
  row->setContentsMargins(24, 0, 0, 0);
  for (QWidget* field : fields) row->addWidget(field, 1);
  rows.layout().addRow(row);
}

}  // namespace

void add_mend_rows(FieldForm<Steps>& rows) {
  const NumberField::Range stations{0.0, 2000.0, 0, 5.0};
  add_step<DropTable>(rows, MendWords::tr("Drop the table it lies on"));
  add_step<DropCrumbs>(rows, MendWords::tr("Drop loose crumbs"));
  add_step<FillHoles>(rows, MendWords::tr("Fill holes up to"));
  place_below(
      rows, {add_number(rows, MendWords::tr("Holes up to"), kInMm, {1.0, 500.0, 0, 5.0}, &FillHoles::up_to)});
  add_step<Smooth>(rows, MendWords::tr("Smooth, passes"));
  place_below(rows, {add_number(rows, MendWords::tr("Passes of smoothing"), kPlain, {1.0, 100.0, 0, 1.0},
                                &Smooth::passes)});
  add_step<PoseLimb>(rows, MendWords::tr("Stand it upright"));
  Choice* distal = rows.choice(FieldText({}, MendWords::tr("Distal end")),
                               {{MendWords::tr("thin end is distal"), int(DistalEnd::kThin)},
                                {MendWords::tr("thick end is distal"), int(DistalEnd::kThick)},
                                {MendWords::tr("as it is"), int(DistalEnd::kAsItIs)},
                                {MendWords::tr("turned over"), int(DistalEnd::kTurned)}},
                               [](auto& steps) {
                                 auto* pose = the_step<PoseLimb>(steps);
                                 return pose ? &pose->distal : nullptr;
                               });
  place_below(rows, {distal, add_number(rows, MendWords::tr("Turn about the axis"), kInDegrees,
                                        {-360.0, 360.0, 0, 5.0}, &PoseLimb::turn_deg)});
  add_step<CutLimb>(rows, MendWords::tr("Keep from, to"), {0.0 * mm, 300.0 * mm});
  place_below(rows, {add_number(rows, MendWords::tr("Keep from"), kInMm, stations, &CutLimb::from),
                     add_number(rows, MendWords::tr("Keep to"), kInMm, stations, &CutLimb::to)});
  add_step<MirrorLimb>(rows, MendWords::tr("Mirror left and right"));
  add_step<Decimate>(rows, MendWords::tr("Even triangles of"));
  place_below(rows, {add_number(rows, MendWords::tr("Edge of the triangles"), kInMm, {1.0, 20.0, 1, 0.5},
                                &Decimate::edge)});
}

}  // namespace wrapgauge
