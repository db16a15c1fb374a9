#include "model/limits/air_hazard.hpp"

#include <algorithm>

#include "model/core/beside_limit.hpp"
#include "model/core/number_text.hpp"
#include "model/core/rounded_down.hpp"
#include "model/limits/limit_share.hpp"
#include "model/limits/pneumatics.hpp"

namespace wrapgauge {
namespace {

bool holds_air(const HazardInputs& in) {
  return in.filling.medium == Medium::kAir && !in.path.states.empty();
}

int group_count(const HazardInputs& in) {
  return static_cast<int>(in.setup.flat.group_inlet.size());
}

Pressure gauge_of(const HazardInputs& in, int group) {
  return Pressure(in.path.states.back().group_pressure_pa[group]);
}

Phrase inlet_name(const HazardInputs& in, int group) {
  const auto inlet = index_of(in.setup.flat.group_inlet[static_cast<std::size_t>(group)]);
  return inlet < in.setup.layout.inlets.size() ? name_of(in.setup.layout.inlets[inlet].name)
                                               : Phrase::worded("unnamed");
}

// The group whose closed air rises most, and where to.
struct Risen {
  int group = 0;
  Pressure before, after;
};

Risen most_risen(const HazardInputs& in, double to_c, Pressure atmosphere) {
  Risen most;
  for (int g = 0; g < group_count(in); ++g) {
    const VolumeCurve curve = volume_curve(in.path, GroupId(g));
    const Pressure before = gauge_of(in, g);
    const Pressure after =
        sealed_gauge_after(curve, in.supply.dead_volume, before, kRoom_c, to_c, atmosphere);
    if (g == 0 || after - before > most.after - most.before) most = {g, before, after};
  }
  return most;
}

Phrase not_calculated() {
  return Phrase::worded("Not calculated: the filling is no air.");
}

double highest_share(const HazardInputs& in) {
  const Eigen::VectorXd share = share_of_limit(in.limits, in.use, in.setup, in.path.states.back(),
                                               in.path.sheet, in.figures, in.map.mean_1cm2_pa);
  return share.size() > 0 ? share.maxCoeff() : 0.0;
}

// Contact follows the air inside, so the share of the limit grows with it.
Severity severity_of(const HazardInputs& in, const Risen& risen) {
  const double grown = risen.before > Pressure() ? risen.after / risen.before : 1.0;
  return highest_share(in) * grown > 1.0 ? Severity::kWarn : Severity::kNote;
}

// How the pressure rises, for the sentence that says when. A rise is never rounded away.
std::vector<Phrase> risen_words(const HazardInputs& in, const Risen& risen, Pressure rigid) {
  const bool shown = figures_of(risen.after) != figures_of(risen.before);
  return {inlet_name(in, risen.group), figures_of(risen.before),
          shown ? figures_of(risen.after) : figures_beside(risen.after, risen.before), figures_of(rigid)};
}

std::vector<Phrase> followed_by(std::vector<Phrase> phrases, const std::vector<Phrase>& more) {
  phrases.insert(phrases.end(), more.begin(), more.end());
  return phrases;
}

// What pushes hardest, and how far it gets; none: the plan names nothing.
struct Push {
  Pressure able;
  Phrase words;
};

std::optional<Push> hardest_push(const Supply& supply) {
  std::optional<Push> push;
  if (supply.syringe) {
    const Pressure able = syringe_pressure(*supply.syringe);
    push = {able, Phrase::worded(
                      "A thumb pushing %1 on a %2 syringe can reach %3",
                      {figures_of(fixed_text(supply.syringe->thumb / newton, 0) + " N"),
                       figures_of(fixed_text(supply.syringe->capacity / mL, 0) + " mL"), figures_of(able)})};
  }
  if (supply.pump_stall && (!push || *supply.pump_stall > push->able))
    push = {*supply.pump_stall,
            Phrase::worded("The pump can reach %1 before it stalls", {figures_of(*supply.pump_stall)})};
  return push;
}

// What the plan's relief valves open at, inlet by inlet.
struct Valves {
  std::vector<Phrase> fitted, missing, below_plan;
  bool too_high = false;  // one opens above the highest setting of its inlet
};

// With as many digits as the plan gives: rounded, it could look like the setting that it exceeds.
Phrase opening(Pressure opens) {
  return figures_of(number_text(opens / kPa, 6) + " kPa (" + number_text(opens / mmHg, 4) + " mmHg)");
}

Pressure gauge_at(const HazardInputs& in, const std::string& inlet) {
  for (int g = 0; g < group_count(in); ++g)
    if (english(inlet_name(in, g)) == inlet) return gauge_of(in, g);
  return Pressure();
}

Valves fitted_valves(const HazardInputs& in) {
  Valves valves;
  for (const InletRelief& allowed : in.relief) {
    const auto opens = in.supply.relief_of(allowed.inlet);
    if (!opens) {
      valves.missing.push_back(name_of(allowed.inlet));
      continue;
    }
    const std::vector<Phrase> values = {opening(*opens), name_of(allowed.inlet)};
    valves.fitted.push_back(Phrase::worded("%1 for inlet '%2'", values));
    valves.too_high = valves.too_high || *opens > allowed.highest + 1e-6 * Pa;
    const Pressure planned = gauge_at(in, allowed.inlet);
    if (*opens < planned - 1e-6 * planned)
      valves.below_plan.push_back(
          Phrase::worded("Inlet '%2' never reaches the planned %3: its valve opens at %1.",
                         {values[0], values[1], figures_of(planned)}));
  }
  return valves;
}

struct SlowestVent {
  int group = 0;
  VentTime vent;
};

SlowestVent slowest_vent(const HazardInputs& in) {
  SlowestVent slowest;
  for (int g = 0; g < group_count(in); ++g) {
    const VentTime vent = vent_time(volume_curve(in.path, GroupId(g)), *in.supply.tubing, gauge_of(in, g),
                                    in.limits.release.down_to);
    if (g == 0 || vent.time > slowest.vent.time) slowest = {g, vent};
  }
  return slowest;
}

}  // namespace

Hazard warming_hazard(const HazardInputs& in) {
  Hazard out{HazardKind::kWarming, Phrase::worded("Sealed air that warms"), Severity::kNote, not_calculated(),
             Phrase::worded("Vent after 5 min on the skin, then set the pressure again.")};
  if (!holds_air(in) || group_count(in) == 0) return out;
  const Pressure rigid = sealed_gauge_after(rigid_volume(100.0 * mL), Volume(), Pressure(), kRoom_c, kSkin_c);
  const Risen risen = most_risen(in, kSkin_c, kAtmosphere);
  out.severity = severity_of(in, risen);
  out.sentence = Phrase::worded(
      "Sealed at %1 and warmed to %2, inlet '%3' rises from %4 to %5; a chamber that could "
      "not grow would gain %6.",
      followed_by({figures_of(number_text(kRoom_c, 3) + " °C"), figures_of(number_text(kSkin_c, 3) + " °C")},
                  risen_words(in, risen, rigid)));
  return out;
}

Hazard rising_hazard(const HazardInputs& in) {
  Hazard out{HazardKind::kRising, Phrase::worded("Sealed air in flight or on a mountain"), Severity::kNote,
             not_calculated(),
             Phrase::worded(
                 "Never wear it sealed in an aircraft, on the way up to altitude or in a pressure chamber.")};
  if (!holds_air(in) || group_count(in) == 0) return out;
  const Pressure rigid =
      sealed_gauge_after(rigid_volume(100.0 * mL), Volume(), Pressure(), kRoom_c, kRoom_c, kCabin);
  const Risen risen = most_risen(in, kRoom_c, kCabin);
  out.severity = severity_of(in, risen);
  out.sentence = Phrase::worded(
      "Sealed on the ground and worn at an air pressure of %1, inlet '%2' rises from %3 to %4; a chamber "
      "that could not grow would gain %5.",
      followed_by({figures_of(fixed_text(kCabin / kPa, 0) + " kPa")}, risen_words(in, risen, rigid)));
  return out;
}

Hazard source_hazard(const HazardInputs& in) {
  Hazard out{HazardKind::kOverPressure, Phrase::worded("A source that can exceed the limit"), Severity::kWarn,
             Phrase::worded("Not calculated: the plan names neither syringe nor pump."),
             Phrase::worded("Fit a relief valve between source and device; watch a separate gauge.")};
  const auto push = hardest_push(in.supply);
  if (!push) return out;
  const auto allowed = lowest_relief(in.relief);
  if (!allowed || !(*allowed > Pressure())) {
    out.sentence = Phrase::worded("%1; no relief setting can be given.", {push->words});
    return out;
  }
  const bool beyond = push->able > *allowed;
  out.severity = beyond && fitted_valves(in).fitted.empty() ? Severity::kWarn : Severity::kNote;
  const Phrase lowest = figures_of(setting_text(*allowed));
  out.sentence =
      beyond ? Phrase::worded("%1, %2 times the lowest relief setting of %3.",
                              {push->words, figures_of(number_text(push->able / *allowed, 2)), lowest})
             : Phrase::worded("%1, below the lowest relief setting of %2.", {push->words, lowest});
  return out;
}

Hazard stuck_hazard(const HazardInputs& in) {
  Hazard out{
      HazardKind::kStuck,
      Phrase::worded("A valve or pump that sticks"),
      Severity::kNote,
      {},
      Phrase::worded(
          "Fit a mechanical relief valve to each inlet; check its opening pressure on a separate gauge.")};
  if (in.relief.empty()) {
    out.sentence = Phrase::worded(
        "No relief setting can be given: nothing is inflated, no limit applies, or fastening alone already "
        "breaks the rule.");
    return out;
  }
  const Valves valves = fitted_valves(in);
  const Phrase rule = Phrase::worded("at no more than %1 (%2)",
                                     {relief_words(in.relief), table_words(in.limits.relief.source)});
  if (valves.fitted.empty()) {
    out.severity = Severity::kWarn;
    out.sentence = Phrase::worded("The plan has no relief valve; it should open %1.", {rule});
    return out;
  }
  const std::vector<Phrase> values = {in_a_row(valves.fitted, ", "), rule};
  out.severity = valves.too_high ? Severity::kAboveLimit : Severity::kNote;
  std::vector<Phrase> said{valves.too_high
                               ? Phrase::worded("The relief valve opens at %1 but should open %2.", values)
                               : Phrase::worded("The relief valve opens at %1; it may open %2.", values)};
  for (const Phrase& inlet : valves.missing)
    said.push_back(Phrase::worded("Inlet '%1' has no relief valve.", {inlet}));
  said.insert(said.end(), valves.below_plan.begin(), valves.below_plan.end());
  if (said.size() > 1) out.severity = std::max(out.severity, Severity::kWarn);
  out.sentence = in_a_row(std::move(said));
  return out;
}

Hazard vent_hazard(const HazardInputs& in) {
  const ReleaseRule& rule = in.limits.release;
  Hazard out{HazardKind::kVent,
             Phrase::worded("Vents too slowly"),
             Severity::kNote,
             {},
             Phrase::worded(
                 "Put a vent that needs no power in the wearer's own hand; time it. Then open the closure.")};
  if (!in.supply.tubing || !holds_air(in) || group_count(in) == 0) {
    const std::vector<Phrase> values = {figures_of(rule.down_to), figures_of(rule.within)};
    out.severity = Severity::kWarn;
    out.sentence =
        in.supply.tubing
            ? Phrase::worded("Not calculated: the filling is no air; it must fall below %1 within %2.",
                             values)
            : Phrase::worded("Not calculated: the plan gives no tubing; it must fall below %1 within %2.",
                             values);
    return out;
  }
  const SlowestVent slowest = slowest_vent(in);
  out.sentence =
      Phrase::worded("With the tube open, inlet '%1' falls below %2 in %3; %4 at most is allowed (%5).",
                     {inlet_name(in, slowest.group), figures_of(rule.down_to), figures_of(slowest.vent.time),
                      figures_of(rule.within), table_words(rule.source)});
  if (slowest.vent.reynolds > kLaminarReynolds)
    out.sentence = in_a_row(
        {out.sentence, Phrase::worded("The flow starts turbulent (Reynolds number %1), so it takes longer.",
                                      {figures_of(fixed_text(slowest.vent.reynolds, 0))})});
  if (slowest.vent.time > rule.within) out.severity = Severity::kAboveLimit;
  return out;
}

Hazard power_hazard(const HazardInputs& in) {
  Hazard out{HazardKind::kPower,
             Phrase::worded("Power lost"),
             Severity::kNote,
             {},
             Phrase::worded(
                 "Use valves that open when power is lost; pull the plug on the bench and time the fall.")};
  if (in.supply.syringe && !in.supply.pump_stall)
    out.sentence = Phrase::worded("The plan names a syringe and no pump.");
  return out;
}

}  // namespace wrapgauge
