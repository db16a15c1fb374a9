#include "model/limits/air_hazard.hpp"

#include <algorithm>

#include "model/core/number_text.hpp"
#include "model/limits/limit_place.hpp"
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

// Strictest limit of the places that are pressed.
Pressure strictest_limit(const HazardInputs& in) {
  const LimitPlaces places(in.limits, in.use, in.figures.share_of_girth);
  Pressure strictest(1e9);
  for (const ChamberFigures& chamber : in.figures.chambers)
    if (chamber.peak > Pressure())
      if (const LimitRow* row = places.at(chamber.peak_at_m, chamber.contact_area).row)
        strictest = std::min(strictest, row->limit);
  if (const LimitRow* row = places.at(in.figures.peak_at_m, Area(1.0)).row)
    strictest = std::min(strictest, row->limit);
  return strictest;
}

bool circumferential(const HazardInputs& in) {
  return in.figures.share_of_girth >= in.limits.circumferential_share;
}

Pressure highest_gauge(const HazardInputs& in) {
  Pressure highest;
  for (int g = 0; g < group_count(in); ++g) highest = std::max(highest, gauge_of(in, g));
  return highest;
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

Phrase not_worked_out() {
  return Phrase::worded("Not worked out: the filling is no air.");
}

// Contact follows the air inside, so the share of the limit grows with it.
Severity severity_of(const HazardInputs& in, const Risen& risen) {
  const Pressure peak = in.figures.peak_anywhere * in.limits.model_factor;
  const double grown = risen.before > Pressure() ? risen.after / risen.before : 1.0;
  return peak * grown > strictest_limit(in) ? Severity::kWarn : Severity::kNote;
}

// How the pressure rises, for the sentence that says when.
std::vector<Phrase> risen_words(const HazardInputs& in, const Risen& risen, Pressure rigid) {
  return {inlet_name(in, risen.group), figures_of(risen.before), figures_of(risen.after), figures_of(rigid)};
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

Pressure highest_relief(const HazardInputs& in) {
  return highest_relief(in.limits, strictest_limit(in), circumferential(in), highest_gauge(in),
                        in.figures.peak_anywhere);
}

Hazard warming_hazard(const HazardInputs& in) {
  Hazard out{Phrase::worded("Closed air that warms"), Severity::kNote, not_worked_out(),
             Phrase::worded("Vent after 5 min on the skin, then set the pressure again.")};
  if (!holds_air(in) || group_count(in) == 0) return out;
  const Pressure rigid = sealed_gauge_after(rigid_volume(100.0 * mL), Volume(), Pressure(), kRoom_c, kSkin_c);
  const Risen risen = most_risen(in, kSkin_c, kAtmosphere);
  out.severity = severity_of(in, risen);
  out.sentence = Phrase::worded(
      "Closed off at %1 and warmed to %2, inlet '%3' rises from %4 to %5; a chamber that could "
      "not grow would gain %6.",
      followed_by({figures_of(number_text(kRoom_c, 3) + " °C"), figures_of(number_text(kSkin_c, 3) + " °C")},
                  risen_words(in, risen, rigid)));
  return out;
}

Hazard cabin_hazard(const HazardInputs& in) {
  Hazard out{Phrase::worded("Closed air in flight or on a mountain"), Severity::kNote, not_worked_out(),
             Phrase::worded("Never wear it closed off in a cabin, a lift to height or a pressure chamber.")};
  if (!holds_air(in) || group_count(in) == 0) return out;
  const Pressure rigid =
      sealed_gauge_after(rigid_volume(100.0 * mL), Volume(), Pressure(), kRoom_c, kRoom_c, kCabin);
  const Risen risen = most_risen(in, kRoom_c, kCabin);
  out.severity = severity_of(in, risen);
  out.sentence = Phrase::worded(
      "Closed off on the ground and worn at %1 of air, inlet '%2' rises from %3 to %4; a chamber that could "
      "not grow would gain %5.",
      followed_by({figures_of(fixed_text(kCabin / kPa, 0) + " kPa")}, risen_words(in, risen, rigid)));
  return out;
}

Hazard source_hazard(const HazardInputs& in) {
  Hazard out{Phrase::worded("A source stronger than the limit"), Severity::kWarn,
             Phrase::worded("Not worked out: the plan names neither syringe nor pump."),
             Phrase::worded("Put a relief valve between source and device; watch a gauge of its own.")};
  const auto push = hardest_push(in.supply);
  if (!push) return out;
  const Pressure allowed = highest_relief(in);
  const bool beyond = push->able > allowed;
  out.severity = beyond && !in.supply.relief ? Severity::kWarn : Severity::kNote;
  out.sentence =
      beyond
          ? Phrase::worded(
                "%1, %2 times the highest relief setting of %3.",
                {push->words, figures_of(fixed_text(push->able / allowed, 0)), figures_of(allowed)})
          : Phrase::worded("%1, below the highest relief setting of %2.", {push->words, figures_of(allowed)});
  return out;
}

Hazard relief_hazard(const HazardInputs& in) {
  const Pressure allowed = highest_relief(in);
  Hazard out{Phrase::worded("A valve that sticks"),
             Severity::kNote,
             {},
             Phrase::worded("Fit a mechanical relief valve and test its opening with a gauge of its own.")};
  const Phrase rule =
      Phrase::worded("at %1 or less (%2)", {figures_of(allowed), table_words(in.limits.relief.source)});
  if (!in.supply.relief) {
    out.severity = Severity::kWarn;
    out.sentence = Phrase::worded("The plan has no relief valve; it should open %1.", {rule});
    return out;
  }
  const Pressure opens = *in.supply.relief;
  const std::vector<Phrase> values = {figures_of(opens), rule};
  out.severity = opens > allowed ? Severity::kAboveLimit : Severity::kNote;
  out.sentence = opens > allowed ? Phrase::worded("The relief valve opens at %1 but should open %2.", values)
                                 : Phrase::worded("The relief valve opens at %1; it may open %2.", values);
  if (opens >= highest_gauge(in)) return out;
  out.severity = std::max(out.severity, Severity::kWarn);
  out.sentence =
      in_a_row({out.sentence, Phrase::worded("That lies below the planned %1, which is never reached.",
                                             {figures_of(highest_gauge(in))})});
  return out;
}

Hazard vent_hazard(const HazardInputs& in) {
  const ReleaseRule& rule = in.limits.release;
  Hazard out{Phrase::worded("No way out in time"),
             Severity::kNote,
             {},
             Phrase::worded("A quick release in the wearer's own hand that needs no power; time it.")};
  if (!in.supply.tubing || !holds_air(in) || group_count(in) == 0) {
    const std::vector<Phrase> values = {figures_of(rule.down_to), figures_of(rule.within)};
    out.severity = Severity::kWarn;
    out.sentence =
        in.supply.tubing
            ? Phrase::worded("Not worked out: the filling is no air; it must fall below %1 within %2.",
                             values)
            : Phrase::worded("Not worked out: the plan gives no tubing; it must fall below %1 within %2.",
                             values);
    return out;
  }
  const SlowestVent slowest = slowest_vent(in);
  out.sentence =
      Phrase::worded("Through the open tube inlet '%1' falls below %2 in %3; %4 is the most (%5).",
                     {inlet_name(in, slowest.group), figures_of(rule.down_to), figures_of(slowest.vent.time),
                      figures_of(rule.within), table_words(rule.source)});
  if (slowest.vent.reynolds > kLaminarReynolds)
    out.sentence = in_a_row(
        {out.sentence, Phrase::worded("The flow starts turbulent (Reynolds number %1), so it takes longer.",
                                      {figures_of(fixed_text(slowest.vent.reynolds, 0))})});
  if (slowest.vent.time > rule.within) out.severity = Severity::kAboveLimit;
  return out;
}

}  // namespace wrapgauge
