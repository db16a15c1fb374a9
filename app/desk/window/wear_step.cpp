#include "app/desk/window/wear_step.hpp"

#include <QHeaderView>
#include <QVBoxLayout>

#include "app/desk/words/phrase_text.hpp"
#include "model/core/number_text.hpp"
#include "model/wrap/station_angle.hpp"

namespace wrapgauge {
namespace {

enum Closing { kOpen, kByStretch, kByLength };

Closing closing_of(const std::optional<Closure>& closure) {
  if (!closure) return kOpen;
  return closure->stretch ? kByStretch : kByLength;
}

QString mm_text(Length length) {
  return figures_text(fixed_text(length / mm, 1)) + QStringLiteral(" mm");
}

QString closing_words(const ClosureReport& closure) {
  QString words = WearStep::tr("Girth there %1, closing length %2; %3 would meet without stretching.")
                      .arg(mm_text(closure.girth_at_anchor), mm_text(closure.closing_length_used),
                           mm_text(closure.closing_length_needed));
  for (const auto& [end, gap] : {std::pair(WearStep::tr("distal edge"), closure.gap_distal),
                                 std::pair(WearStep::tr("proximal edge"), closure.gap_proximal)})
    words +=
        QChar('\n') + (gap > Length() ? WearStep::tr("Laid without stretching, a gap of %1 stays at the %2.")
                                      : WearStep::tr("Laid without stretching, %1 overlap at the %2."))
                          .arg(mm_text(gap > Length() ? gap : -gap), end);
  return words;
}

}  // namespace

WearStep::WearStep(PlanSession& session, QWidget* parent)
    : StepForm(session, parent), words_(words_label({}, this)), quality_(new QTableWidget(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(words_);
  make_anchor(*column);
  column->addWidget(heading_label(tr("Closing"), this));
  make_closure(*column);
  column->addWidget(heading_label(tr("How it lies"), this));
  quality_->setAccessibleName(tr("Stretch and shear of each chamber laid on"));
  quality_->setColumnCount(3);
  quality_->setHorizontalHeaderLabels({tr("Part"), tr("Stretch"), tr("Shear")});
  quality_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  quality_->verticalHeader()->hide();
  quality_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  quality_->setTabKeyNavigation(false);
  quality_->setMinimumHeight(150);
  column->addWidget(quality_);
  connect_fields();
}

void WearStep::make_anchor(QLayout& column) {
  here_ = new QPushButton(tr("Place it at the picked spot"), this);
  here_->setToolTip(tr("Click a spot on the body first."));
  here_->setEnabled(false);
  const QString mm_unit = QStringLiteral("mm");
  station_ =
      new NumberField(tr("Station of the anchor from the distal end"), mm_unit, {0.0, 2000.0, 1, 1.0}, this);
  station_->setObjectName(QStringLiteral("station"));
  angle_ = new NumberField(tr("Angle of the anchor about the axis"), QStringLiteral("°"),
                           {-360.0, 360.0, 1, 5.0}, this);
  turn_ = new NumberField(tr("Turn of the layout on the skin"), QStringLiteral("°"), {-180.0, 180.0, 1, 1.0},
                          this);
  point_x_ = new NumberField(tr("Point of the layout that lies on the anchor, x"), mm_unit,
                             {-3000.0, 3000.0, 1, 1.0}, this);
  point_y_ = new NumberField(tr("Point of the layout that lies on the anchor, y"), mm_unit,
                             {-3000.0, 3000.0, 1, 1.0}, this);
  station_->say_source(tr("Along the body's axis from its distal end."));
  angle_->say_source(
      tr("About the axis from the body's +x, right-handed towards proximal. On a made limb 0 is "
         "lateral, 90 front, 180 medial, 270 back."));
  turn_->say_source(tr("0: the layout's x goes straight round the limb."));
  QFormLayout* form = column_form(nullptr);
  form->addRow(here_);
  form->addRow(tr("Station"), station_);
  form->addRow(tr("Angle"), angle_);
  form->addRow(tr("Turn"), turn_);
  form->addRow(tr("Layout point x"), point_x_);
  form->addRow(tr("Layout point y"), point_y_);
  static_cast<QVBoxLayout&>(column).addLayout(form);
}

void WearStep::make_closure(QLayout& column) {
  const QString mm_unit = QStringLiteral("mm");
  closes_ = new Choice(tr("How it closes"), this);
  closes_->add(tr("Does not go round"), kOpen);
  closes_->add(tr("Closed, stretched on the girth"), kByStretch);
  closes_->add(tr("Closed at a length"), kByLength);
  stretch_ = new NumberField(tr("Stretch of the closure"), QStringLiteral("%"), {-50.0, 200.0, 1, 0.5}, this);
  length_ = new NumberField(tr("Closing length"), mm_unit, {1.0, 3000.0, 1, 1.0}, this);
  from_x_ = new NumberField(tr("First closing line at x"), mm_unit, {-3000.0, 3000.0, 1, 1.0}, this);
  taper_ =
      new NumberField(tr("Taper of the closing lines"), QStringLiteral("mm/mm"), {-2.0, 2.0, 3, 0.01}, this);
  stretch_->say_source(tr("The closing length is the girth at the anchor divided by 1 + stretch."));
  taper_->say_source(tr("Growth of the closing length for each millimetre towards proximal."));
  closing_ = column_form(nullptr);
  closing_->addRow(closes_);
  closing_->addRow(tr("Stretch"), stretch_);
  closing_->addRow(tr("Closing length"), length_);
  closing_->addRow(tr("From x"), from_x_);
  closing_->addRow(tr("Taper"), taper_);
  static_cast<QVBoxLayout&>(column).addLayout(closing_);
}

void WearStep::connect_fields() {
  connect(here_, &QPushButton::clicked, this, [this] {
    if (picked_m_) place_at(*picked_m_);
  });
  connect(station_, &NumberField::edited, this, &WearStep::take_station);
  connect(angle_, &NumberField::edited, this, &WearStep::take_station);
  connect(turn_, &NumberField::edited, this, [this](double value) {
    change(tr("Turn the layout"), QStringLiteral("wear.turn"),
           [&](Plan& plan) { plan.placement.turn_deg = value; });
  });
  const auto take_point = [this] {
    change(tr("Layout point"), QStringLiteral("wear.point"), [&](Plan& plan) {
      plan.placement.layout_point_m = Vec2(1e-3 * point_x_->value(), 1e-3 * point_y_->value());
    });
  };
  connect(point_x_, &NumberField::edited, this, take_point);
  connect(point_y_, &NumberField::edited, this, take_point);
  connect(closes_, &Choice::chosen, this, [this] { take_closure({}); });
  for (NumberField* field : {stretch_, length_, from_x_, taper_})
    connect(field, &NumberField::edited, this, [this] { take_closure(QStringLiteral("wear.closure")); });
}

void WearStep::place_at(const Vec3& point_m) {
  change(tr("Place the layout"), {}, [&](Plan& plan) { plan.placement.anchor = AnchorAtPoint{point_m}; });
}

void WearStep::show_picked(const std::optional<Vec3>& point_m) {
  picked_m_ = point_m;
  here_->setEnabled(point_m.has_value());
}

void WearStep::take_station() {
  change(tr("Move the layout"), QStringLiteral("wear.station"), [&](Plan& plan) {
    plan.placement.anchor = AnchorAtStation{station_->value() * mm, angle_->value()};
  });
}

void WearStep::take_closure(const QString& merge) {
  const auto closing = static_cast<Closing>(closes_->currentData().toInt());
  const auto before = plan().layout.closure;
  Layout layout = plan().layout;
  layout.closure.reset();
  if (closing != kOpen) {
    const bool anew = !before;
    Closure closure{anew ? bounds(layout.outline_m).low.x() : 1e-3 * from_x_->value(),
                    {},
                    {},
                    anew ? 0.0 : taper_->value()};
    if (closing == kByStretch) closure.stretch = 0.01 * stretch_->value();
    if (closing == kByLength) closure.closing_length = length_->value() * mm;
    layout.closure = closure;
  }
  session().edit_layout(tr("Closing"), std::move(layout), merge);
}

void WearStep::show_closure() {
  const auto& closure = plan().layout.closure;
  const Closing closing = closing_of(closure);
  closes_->show_value(closing);
  closing_->setRowVisible(stretch_, closing == kByStretch);
  closing_->setRowVisible(length_, closing == kByLength);
  for (NumberField* field : {from_x_, taper_}) closing_->setRowVisible(field, closing != kOpen);
  if (!closure) return;
  if (closure->stretch) stretch_->show_value(100.0 * *closure->stretch);
  if (closure->closing_length) length_->show_value(*closure->closing_length / mm);
  from_x_->show_value(1e3 * closure->from_x_m);
  taper_->show_value(closure->taper);
}

void WearStep::show_plan() {
  const Placement& placement = plan().placement;
  const auto checked = session().last_checked();
  if (const auto* anchor = std::get_if<AnchorAtStation>(&placement.anchor)) {
    station_->show_value(anchor->station / mm);
    angle_->show_value(anchor->angle_deg);
  } else if (checked && checked->surface) {
    const auto place = station_and_angle(checked->surface->sections(), checked->surface->axis(),
                                         std::get<AnchorAtPoint>(placement.anchor).point_m);
    if (place) {
      station_->show_value(place->station / mm);
      angle_->show_value(place->angle_deg);
    }
  }
  turn_->show_value(placement.turn_deg);
  const Bounds2 box = bounds(plan().layout.outline_m);
  const Vec2 point = placement.layout_point_m.value_or(Vec2(0.5 * (box.low + box.high)));
  point_x_->show_value(1e3 * point.x());
  point_y_->show_value(1e3 * point.y());
  for (QWidget* field : std::initializer_list<QWidget*>{closes_, point_x_, point_y_})
    field->setEnabled(has_layout(plan()));
  show_closure();
}

void WearStep::show_checked() {
  const auto checked = session().last_checked();
  QString words;
  quality_->setRowCount(0);
  if (checked && checked->wear_problem) words = QString::fromStdString(checked->wear_problem->message);
  if (checked && checked->prepared) {
    const Wrap& wrap = checked->prepared->wrap;
    if (wrap.closure) words = closing_words(*wrap.closure);
    if (!plan().layout.closure || !plan().layout.closure->closing_length)
      if (checked->prepared->closing_length) length_->show_value(*checked->prepared->closing_length / mm);
    show_quality(wrap);
  }
  words_->setText(words);
  words_->setVisible(!words.isEmpty());
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
