#include "app/desk/window/supply_fields.hpp"

#include <QFormLayout>
#include <QLabel>

#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

SupplyFields::SupplyFields(QWidget* parent) : QWidget(parent) {
  QFormLayout* form = column_form(this);
  form->addRow(heading_label(tr("Session"), this));
  make_session(*form);
  form->addRow(heading_label(tr("Supply"), this));
  make_supply(*form);
  form->addRow(heading_label(tr("Filling"), this));
  make_filling(*form);
}

OptionalNumber SupplyFields::add_optional(QFormLayout& form, const QString& title, const QString& unit,
                                          const NumberField::Range& range, const QString& source) {
  const OptionalNumber row = optional_number(this, title, unit, range, source, [this] { emit edited(); });
  form.addRow(row.box, row.field);
  return row;
}

NumberField* SupplyFields::add_number(QFormLayout& form, const QString& title, const QString& unit,
                                      const NumberField::Range& range, const QString& source) {
  auto* field = new NumberField(title, unit, range, this);
  field->say_source(source);
  form.addRow(title, field);
  connect(field, &NumberField::edited, this, &SupplyFields::edited);
  return field;
}

void SupplyFields::make_session(QFormLayout& form) {
  const QString s = QStringLiteral("s");
  minutes_ = add_optional(form, tr("Session"), QStringLiteral("min"), {0.1, 1440.0, 1, 1.0},
                          tr("How long it is worn; without it exposure over time is not worked out."));
  hold_ = add_optional(
      form, tr("Hold"), s, {0.1, 86400.0, 1, 5.0},
      tr("Of every inlet without steps of its own; without it the inlet is on from start to end."));
  off_ = add_optional(form, tr("Then off"), s, {0.0, 86400.0, 1, 5.0}, tr("Vented between two holds."));
  ramp_ = add_number(form, tr("Ramp"), s, {0.0, 3600.0, 1, 1.0}, tr("Up before a hold and down after it."));
}

void SupplyFields::make_supply(QFormLayout& form) {
  const QString mm_unit = QStringLiteral("mm"), ml = QStringLiteral("mL"), kpa = QStringLiteral("kPa");
  syringe_ = add_optional(form, tr("Syringe"), ml, {0.1, 5000.0, 1, 10.0}, tr("Capacity of the syringe."));
  syringe_bore_ =
      add_number(form, tr("Syringe bore"), mm_unit, {0.1, 100.0, 1, 1.0}, tr("Inner width of the barrel."));
  thumb_ = add_number(form, tr("Push on it"), QStringLiteral("N"), {1.0, 1000.0, 1, 5.0},
                      tr("Force of the hand on the plunger; 50 N is a firm push (judgement)."));
  pump_ = add_optional(form, tr("Pump stalls at"), kpa, {0.1, 1000.0, 1, 1.0},
                       tr("Gauge pressure at which the pump gives up."));
  tubing_ = add_optional(form, tr("Tube"), mm_unit, {1.0, 1e5, 1, 50.0}, tr("From the chamber to open air."));
  tubing_bore_ =
      add_number(form, tr("Tube bore"), mm_unit, {0.1, 100.0, 2, 0.5}, tr("Inner width of the tube."));
  relief_ = add_optional(form, tr("Relief valve"), kpa, {0.1, 1000.0, 2, 0.1},
                         tr("Gauge pressure at which a mechanical valve opens."));
  dead_ =
      add_number(form, tr("Dead volume"), ml, {0.0, 5000.0, 1, 1.0}, tr("Air in tube, valve and syringe."));
  dead_->setObjectName(QStringLiteral("dead volume"));
}

void SupplyFields::make_filling(QFormLayout& form) {
  medium_ = new Choice(tr("Filled with"), this);
  medium_->add(tr("air"), int(Medium::kAir));
  medium_->add(tr("water"), int(Medium::kWater));
  medium_->add(tr("gel"), int(Medium::kGel));
  form.addRow(tr("Filled with"), medium_);
  connect(medium_, &Choice::chosen, this, &SupplyFields::edited);
  celsius_ = add_optional(form, tr("Worn warm or cold"), QStringLiteral("°C"), {-30.0, 100.0, 1, 1.0},
                          tr("Temperature of the face on the skin when it is put on."));
  contact_ = add_optional(form, tr("For"), QStringLiteral("min"), {0.1, 1440.0, 1, 1.0},
                          tr("How long it is worn warm or cold."));
}

void SupplyFields::show_plan(const Plan& plan) {
  const auto in = [](const auto& value, auto unit) {
    return value ? std::optional<double>(*value / unit) : std::nullopt;
  };
  const auto& session = plan.session;
  minutes_.show(session ? std::optional(session->length / minute) : std::nullopt, 30.0);
  hold_.show(session ? in(session->hold, second) : std::nullopt, 30.0);
  off_.show(session ? in(session->off, second) : std::nullopt, 90.0);
  ramp_->show_value(session ? session->ramp / second : 0.0);
  for (QWidget* field : std::initializer_list<QWidget*>{hold_.box, off_.box, ramp_})
    field->setEnabled(session.has_value());
  const Supply& supply = plan.supply;
  syringe_.show(supply.syringe ? std::optional(supply.syringe->capacity / mL) : std::nullopt, 60.0);
  syringe_bore_->show_value(supply.syringe ? supply.syringe->bore / mm : 28.0);
  thumb_->show_value(supply.syringe ? supply.syringe->thumb / newton : Syringe{}.thumb / newton);
  syringe_bore_->setEnabled(supply.syringe.has_value());
  thumb_->setEnabled(supply.syringe.has_value());
  pump_.show(in(supply.pump_stall, kPa), 40.0);
  tubing_.show(supply.tubing ? std::optional(supply.tubing->length / mm) : std::nullopt, 600.0);
  tubing_bore_->show_value(supply.tubing ? supply.tubing->bore / mm : 2.0);
  tubing_bore_->setEnabled(supply.tubing.has_value());
  relief_.show(in(supply.relief, kPa), 5.0);
  dead_->show_value(supply.dead_volume / mL);
  medium_->show_value(int(plan.filling.medium));
  celsius_.show(plan.filling.celsius, 37.0);
  contact_.show(in(plan.filling.contact, minute), 10.0);
}

void SupplyFields::apply(Plan& plan) const {
  const auto in = [](std::optional<double> value, auto unit) {
    return value ? std::optional(*value * unit) : std::nullopt;
  };
  plan.session.reset();
  if (const auto length = in(minutes_.value(), minute))
    plan.session =
        Session{*length, in(hold_.value(), second), in(off_.value(), second), ramp_->value() * second};
  // A time off belongs to a hold.
  if (plan.session && !plan.session->hold) plan.session->off.reset();
  if (plan.session && plan.session->hold && !plan.session->off)
    plan.session->off = off_.field->value() * second;
  plan.supply.syringe.reset();
  if (const auto capacity = in(syringe_.value(), mL))
    plan.supply.syringe = Syringe{*capacity, syringe_bore_->value() * mm, thumb_->value() * newton};
  plan.supply.pump_stall = in(pump_.value(), kPa);
  plan.supply.tubing.reset();
  if (const auto length = in(tubing_.value(), mm))
    plan.supply.tubing = Tubing{*length, tubing_bore_->value() * mm};
  plan.supply.relief = in(relief_.value(), kPa);
  plan.supply.dead_volume = dead_->value() * mL;
  plan.filling.medium = static_cast<Medium>(medium_->currentData().toInt());
  plan.filling.celsius = celsius_.value();
  plan.filling.contact = in(contact_.value(), minute);
}

}  // namespace wrapgauge
