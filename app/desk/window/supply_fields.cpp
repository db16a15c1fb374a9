#include "app/desk/window/supply_fields.hpp"

#include <QCoreApplication>

#include "app/desk/window/step_form.hpp"

namespace wrapgauge {
namespace {

struct SupplyWords {
  Q_DECLARE_TR_FUNCTIONS(wrapgauge::SupplyFields)
};

constexpr Time kUsualOff = 90.0 * second;

// A whole that is there when its number `member` is given; ticked, it begins as `fresh`.
template <class At, class Whole, class Value, class One>
void add_whole(FieldForm<Plan>& rows, const FieldText& text, const FieldUnit<One>& unit,
               const NumberField::Range& range, At at, Value Whole::*member, const Whole& fresh) {
  rows.optional_by(
      text, unit.words, range,
      [at, unit, member](const Plan& from) {
        const std::optional<Whole>& there = *at(from);
        return unit.read(there ? &((*there).*member) : nullptr);
      },
      [at, unit, member, fresh](Plan& to, std::optional<double> value) {
        std::optional<Whole>& there = *at(to);
        if (!value) return there.reset();
        if (!there) there = fresh;
        unit.write(&((*there).*member), *value);
      },
      *unit.read(&(fresh.*member)));
}

void add_session(FieldForm<Plan>& rows) {
  const FieldText length(
      SupplyWords::tr("Session"), {},
      SupplyWords::tr("How long it is worn. Without it, exposure over time is not calculated."));
  const FieldText hold(
      SupplyWords::tr("Hold"), {},
      SupplyWords::tr(
          "Of every inlet without steps of its own; without it the inlet is on from start to end."));
  const FieldText off(SupplyWords::tr("Then off"), {}, SupplyWords::tr("Vented between two holds."));
  const FieldText ramp(SupplyWords::tr("Ramp"), {}, SupplyWords::tr("Up before a hold and down after it."));
  const Session fresh{30.0 * minute, {}, {}, {}};
  add_whole(
      rows, length, kInMinutes, {0.1, 1440.0, 1, 1.0}, [](auto& plan) { return &plan.session; },
      &Session::length, fresh);
  rows.optional(
      hold, kInSeconds, {0.1, 86400.0, 1, 5.0},
      [](auto& plan) { return plan.session ? &plan.session->hold : nullptr; }, 30.0);
  rows.optional(
      off, kInSeconds, {0.0, 86400.0, 1, 5.0},
      [](auto& plan) { return plan.session ? &plan.session->off : nullptr; }, kUsualOff / second);
  rows.number(ramp, kInSeconds, {0.0, 3600.0, 1, 1.0},
              [](auto& plan) { return plan.session ? &plan.session->ramp : nullptr; });
}

void add_supply(FieldForm<Plan>& rows) {
  const FieldText syringe(SupplyWords::tr("Syringe"), {}, SupplyWords::tr("Capacity of the syringe."));
  const FieldText bore(SupplyWords::tr("Syringe bore"), {}, SupplyWords::tr("Inner width of the barrel."));
  const FieldText thumb(
      SupplyWords::tr("Push on it"), {},
      SupplyWords::tr("Force of the hand on the plunger; 50 N is a firm push (judgement)."));
  const FieldText pump(SupplyWords::tr("Pump stalls at"), {},
                       SupplyWords::tr("Gauge pressure at which the pump gives up."));
  const FieldText tube(SupplyWords::tr("Tube"), {}, SupplyWords::tr("From the chamber to open air."));
  const FieldText tube_bore(SupplyWords::tr("Tube bore"), {}, SupplyWords::tr("Inner width of the tube."));
  const FieldText relief(SupplyWords::tr("Relief valve"), {},
                         SupplyWords::tr("Gauge pressure at which a mechanical valve opens."));
  const FieldText dead(SupplyWords::tr("Dead volume"), {}, SupplyWords::tr("Air in tube, valve and syringe."),
                       "dead volume");
  const Syringe usual{60.0 * mL, 28.0 * mm};
  const Tubing thin{600.0 * mm, 2.0 * mm};
  add_whole(
      rows, syringe, kInMl, {0.1, 5000.0, 1, 10.0}, [](auto& plan) { return &plan.supply.syringe; },
      &Syringe::capacity, usual);
  rows.number(
      bore, kInMm, {0.1, 100.0, 1, 1.0},
      [](auto& plan) { return plan.supply.syringe ? &plan.supply.syringe->bore : nullptr; }, usual.bore / mm);
  rows.number(
      thumb, kInNewton, {1.0, 1000.0, 1, 5.0},
      [](auto& plan) { return plan.supply.syringe ? &plan.supply.syringe->thumb : nullptr; },
      usual.thumb / newton);
  rows.optional(
      pump, kInKpa, {0.1, 1000.0, 1, 1.0}, [](auto& plan) { return &plan.supply.pump_stall; }, 40.0);
  add_whole(
      rows, tube, kInMm, {1.0, 1e5, 1, 50.0}, [](auto& plan) { return &plan.supply.tubing; }, &Tubing::length,
      thin);
  rows.number(
      tube_bore, kInMm, {0.1, 100.0, 2, 0.5},
      [](auto& plan) { return plan.supply.tubing ? &plan.supply.tubing->bore : nullptr; }, thin.bore / mm);
  rows.optional(
      relief, kInKpa, {0.1, 1000.0, 2, 0.1}, [](auto& plan) { return &plan.supply.relief; }, 5.0);
  rows.number(dead, kInMl, {0.0, 5000.0, 1, 1.0}, [](auto& plan) { return &plan.supply.dead_volume; });
}

void add_filling(FieldForm<Plan>& rows) {
  const FieldText warm(SupplyWords::tr("Worn warm or cold"), {},
                       SupplyWords::tr("Temperature of the face on the skin when it is put on."));
  const FieldText contact(SupplyWords::tr("For"), {}, SupplyWords::tr("How long it is worn warm or cold."));
  rows.choice(FieldText(SupplyWords::tr("Filled with")),
              {{SupplyWords::tr("air"), int(Medium::kAir)},
               {SupplyWords::tr("water"), int(Medium::kWater)},
               {SupplyWords::tr("gel"), int(Medium::kGel)}},
              [](auto& plan) { return &plan.filling.medium; });
  rows.optional(
      warm, kInCelsius, {-30.0, 100.0, 1, 1.0}, [](auto& plan) { return &plan.filling.celsius; }, 37.0);
  rows.optional(
      contact, kInMinutes, {0.1, 1440.0, 1, 1.0}, [](auto& plan) { return &plan.filling.contact; }, 10.0);
}

}  // namespace

void add_supply_rows(FieldForm<Plan>& rows) {
  QWidget* owner = rows.owner();
  rows.layout().addRow(heading_label(SupplyWords::tr("Session"), owner));
  add_session(rows);
  rows.layout().addRow(heading_label(SupplyWords::tr("Supply"), owner));
  add_supply(rows);
  rows.layout().addRow(heading_label(SupplyWords::tr("Filling"), owner));
  add_filling(rows);
}

void settle_session(Plan& plan) {
  if (!plan.session) return;
  if (!plan.session->hold)
    plan.session->off.reset();
  else if (!plan.session->off)
    plan.session->off = kUsualOff;
}

}  // namespace wrapgauge
