#include "app/desk/window/wear_step.hpp"

#include "app/desk/words/phrase_text.hpp"
#include "model/core/number_text.hpp"
#include "model/limits/fit_finding.hpp"
#include "model/wrap/fit_words.hpp"
#include "model/wrap/station_angle.hpp"

namespace wrapgauge {
namespace {

enum Closing { kOpen, kByStretch, kByLength };

Closing closing_of(const std::optional<Closure>& closure) {
  if (!closure) return kOpen;
  return closure->stretch ? kByStretch : kByLength;
}

// As `look` says it.
QString fit_words(const Fit& fit) {
  QStringList words;
  if (!fit.sections.empty()) words << text(fastened_words(fit));
  for (const Finding& finding : fit_findings(fit))
    if (finding.source_key != kRoundKey)
      words << text(finding.sentence);
    else
      words = QStringList{text(finding.sentence)};
  return words.join(QChar('\n'));
}

// In one breath; all of it stands behind "Why".
QString fit_verdict(const Fit& fit) {
  QString words;
  if (!fit.sections.empty()) {
    const auto percent = [](const GirthSection& section) {
      return fixed_words(100.0 * section.stretch(), 1);
    };
    words = WearStep::tr("Fastened at a closing length of %1 mm; stretch round the limb %2 to %3 %.")
                .arg(fixed_words(fit.anchor->closing_length / mm, 1), percent(loosest(fit)),
                     percent(tightest(fit)));
  } else {
    words = WearStep::tr("Lies on the skin and does not close.");
  }
  const auto minded = fit_findings(fit).size();
  return minded > 0
             ? words + u' ' +
                   WearStep::tr("To check: %1, under Why.").arg(minded).replace(u' ', QChar(QChar::Nbsp))
             : words;
}

Vec2 layout_point_m(const Plan& plan) {
  const Bounds2 box = bounds(plan.layout.outline_m);
  return plan.placement.layout_point_m.value_or(Vec2(0.5 * (box.low + box.high)));
}

}  // namespace

WearStep::WearStep(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      here_(action_button(this, tr("Place it at the picked spot"),
                          [this] {
                            if (picked_m_) place_at(*picked_m_);
                          })),
      point_box_(new QWidget(this)),
      anchor_(plan_rows(column_form(nullptr))),
      point_(plan_rows(column_form(point_box_))),
      closing_(layout_rows(column_form(nullptr), true)),
      verdict_(words_label({}, this)),
      words_(words_label({}, this)),
      why_(new FineSettings(words_, tr("how it lies, in full"), this, tr("Why"))),
      lies_heading_(heading_label(tr("How it lies"), this)),
      quality_(words_table(this, tr("Stretch and shear of each chamber laid on"),
                           {tr("Part"), tr("Stretch"), tr("Shear")})) {
  here_->setToolTip(tr("Click a spot on the body first."));
  here_->setEnabled(false);
  quality_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  quality_->setMinimumHeight(150);
  arrange();
  add_anchor();
  add_point();
  add_closing();
}

void WearStep::arrange() {
  QVBoxLayout* column = plain_column(this);
  column->addWidget(verdict_);
  column->addWidget(why_);
  column->addLayout(&anchor_.layout());
  column->addWidget(heading_label(tr("Closing"), this));
  column->addLayout(&closing_.layout());
  column->addWidget(lies_heading_);
  column->addWidget(quality_);
  column->addWidget(new FineSettings(point_box_, tr("which point of the layout lies on the spot"), this));
}

void WearStep::add_anchor() {
  const FieldText station(tr("Station"), tr("Station of the anchor from the distal end"),
                          tr("Along the body's axis from its distal end."), "station");
  const FieldText angle(
      tr("Angle"), tr("Angle of the anchor about the axis"),
      tr("About the axis from the body's +x, right-handed towards proximal. On a made limb 0 is "
         "lateral, 90 front, 180 medial, 270 back."));
  const FieldText turn(tr("Turn"), tr("Turn of the layout on the skin"),
                       tr("0: the layout's x goes straight round the limb."));
  anchor_.layout().addRow(here_);
  anchor_.number_by(
      station, kInMm.words, {0.0, 2000.0, 1, 1.0},
      [this](const Plan&) { return std::optional(anchor_place().station / mm); },
      [this](Plan& plan, double value) {
        plan.placement.anchor = AnchorAtStation{value * mm, anchor_place().angle_deg};
      });
  anchor_.number_by(
      angle, kInDegrees.words, {-360.0, 360.0, 1, 5.0},
      [this](const Plan&) { return std::optional(anchor_place().angle_deg); },
      [this](Plan& plan, double value) {
        plan.placement.anchor = AnchorAtStation{anchor_place().station, value};
      });
  anchor_.number(turn, kInDegrees, {-180.0, 180.0, 1, 1.0},
                 [](auto& plan) { return &plan.placement.turn_deg; });
}

// Its middle, mostly.
void WearStep::add_point() {
  const QString source =
      tr("The point of the flat layout that lies on the spot: its middle until you say otherwise.");
  const FieldText x(tr("Across"), tr("Point of the layout that lies on the spot, across"), source);
  const FieldText y(tr("Upwards"), tr("Point of the layout that lies on the spot, upwards"), source);
  for (const auto& [text, axis] : {std::pair(x, 0), std::pair(y, 1)})
    point_.number_by(
        text, kInMm.words, {-3000.0, 3000.0, 1, 1.0},
        [axis = axis](const Plan& plan) {
          return has_layout(plan) ? std::optional(1e3 * layout_point_m(plan)[axis]) : std::nullopt;
        },
        [axis = axis](Plan& plan, double value) {
          Vec2 point = layout_point_m(plan);
          point[axis] = 1e-3 * value;
          plan.placement.layout_point_m = point;
        });
}

void WearStep::add_closing() {
  closes_ = new Choice(tr("How it closes"), this);
  closes_->add({{tr("Does not go round"), kOpen},
                {tr("Closed, stretched on the girth"), kByStretch},
                {tr("Closed at a length"), kByLength}});
  connect(closes_, &Choice::chosen, this, [this](const QVariant& value) { take_closing(value.toInt()); });
  closing_.layout().addRow(closes_);
  const FieldText stretch(tr("Closing stretch"), tr("Stretch of the closure"),
                          tr("The closing length is the girth at the anchor divided by 1 + stretch."));
  const FieldText length(tr("Closing length"));
  const FieldText from_x(tr("From x"), tr("First closing line at x"));
  const FieldText taper(tr("Taper"), tr("Taper of the closing lines"),
                        tr("Growth of the closing length for each millimetre towards proximal."));
  const FieldText bend(
      tr("Bend"), tr("Bend of the closing lines"),
      tr("For a limb that bulges: below half height the closing length grows by so much more for "
         "each millimetre, above it by so much less. 0: straight."));
  const FieldUnit<double> mm_a_mm{"mm/mm", 1.0};
  closing_.number(stretch, kInPercent, {-50.0, 200.0, 1, 0.5}, [](auto& layout) {
    return layout.closure && layout.closure->stretch ? &*layout.closure->stretch : nullptr;
  });
  closing_.number(length, kInMm, {1.0, 3000.0, 1, 1.0}, [](auto& layout) {
    return layout.closure && layout.closure->closing_length ? &*layout.closure->closing_length : nullptr;
  });
  closing_.number(from_x, kMetresInMm, {-3000.0, 3000.0, 1, 1.0},
                  [](auto& layout) { return layout.closure ? &layout.closure->from_x_m : nullptr; });
  closing_.number(taper, mm_a_mm, {-2.0, 2.0, 3, 0.01},
                  [](auto& layout) { return layout.closure ? &layout.closure->taper : nullptr; });
  closing_.number(bend, mm_a_mm, {-2.0, 2.0, 3, 0.01},
                  [](auto& layout) { return layout.closure ? &layout.closure->bend : nullptr; });
}

// Where the plan puts it, or what that is in station and angle.
AnchorAtStation WearStep::anchor_place() const {
  if (const auto* anchor = std::get_if<AnchorAtStation>(&plan().placement.anchor)) return *anchor;
  if (!now().check || !now().check->surface) return {};
  const BodySurface& surface = *now().check->surface;
  const auto place = station_and_angle(surface.sections(), surface.axis(),
                                       std::get<AnchorAtPoint>(plan().placement.anchor).point_m);
  return place ? *place : AnchorAtStation{};
}

void WearStep::place_at(const Vec3& point_m) {
  change(tr("Place the layout"), {}, [&](Plan& plan) { plan.placement.anchor = AnchorAtPoint{point_m}; });
}

void WearStep::show_picked(const std::optional<Vec3>& point_m) {
  picked_m_ = point_m;
  here_->setEnabled(point_m.has_value());
}

// Another way of closing begins with what there is now: the length that the girth and the stretch give, or
// the other way round.
void WearStep::take_closing(int closing) {
  change_layout(tr("Closing"), {}, [&](Layout& layout) {
    const Closure before = layout.closure.value_or(Closure{bounds(layout.outline_m).low.x(), {}, {}, 0.0});
    layout.closure.reset();
    if (closing == kOpen) return;
    layout.closure = Closure{before.from_x_m, {}, {}, before.taper, before.bend};
    if (closing == kByStretch) layout.closure->stretch = before.stretch.value_or(last_stretch_);
    if (closing == kByLength) layout.closure->closing_length = before.closing_length.value_or(last_length_);
  });
}

void WearStep::show_state(const SessionState& now, const SessionState& before) {
  anchor_.show(*now.plan);
  point_.show(*now.plan);
  closing_.show(now.plan->layout);
  const auto& closure = now.plan->layout.closure;
  closes_->show_value(closing_of(closure));
  closes_->setEnabled(has_layout(*now.plan));
  if (closure && closure->stretch) last_stretch_ = *closure->stretch;
  if (now.check && now.check->prepared && now.check->prepared->closing_length)
    last_length_ = *now.check->prepared->closing_length;
  if (now.check == before.check && now.plan == before.plan) return;
  show_lying(now.check.get());
}

void WearStep::show_lying(const CheckedPlan* checked) {
  QString verdict, words;
  quality_->setRowCount(0);
  if (checked && checked->wear_problem) verdict = text(*checked->wear_problem);
  if (checked && checked->prepared) {
    const Wrap& wrap = checked->prepared->wrap;
    verdict = fit_verdict(wrap.fit);
    words = fit_words(wrap.fit);
    show_quality(wrap);
  }
  verdict_->setText(verdict);
  verdict_->setVisible(!verdict.isEmpty());
  words_->setText(words);
  why_->setVisible(!words.isEmpty());
  for (QWidget* lying : {static_cast<QWidget*>(lies_heading_), static_cast<QWidget*>(quality_)})
    lying->setVisible(quality_->rowCount() > 0);
}

void WearStep::show_quality(const Wrap& wrap) {
  quality_->setRowCount(static_cast<int>(wrap.quality.size()));
  for (int i = 0; i < quality_->rowCount(); ++i) {
    const WrapQuality& quality = wrap.quality[static_cast<std::size_t>(i)];
    const auto number = [](double value, int decimals) { return figures_text(fixed_text(value, decimals)); };
    const bool whole = i + 1 == quality_->rowCount();
    const QString part = whole ? tr("whole layout") : QString::fromStdString(quality.part);
    quality_->setItem(i, 0, new QTableWidgetItem(part));
    quality_->setItem(
        i, 1,
        new QTableWidgetItem(
            tr("%1 to %2").arg(number(quality.stretch_min, 3), number(quality.stretch_max, 3))));
    quality_->setItem(i, 2, new QTableWidgetItem(number(quality.shear_max_deg, 1) + QStringLiteral("°")));
  }
}

}  // namespace wrapgauge
