#include "model/limits/air_hazard.hpp"

#include <algorithm>

#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/time_text.hpp"
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

std::string inlet_name(const HazardInputs& in, int group) {
  const auto inlet = index_of(in.setup.flat.group_inlet[static_cast<std::size_t>(group)]);
  return inlet < in.setup.layout.inlets.size() ? in.setup.layout.inlets[inlet].name : "unnamed";
}

// Strictest limit of the places that are pressed.
Pressure strictest_limit(const HazardInputs& in) {
  const LimitPlaces places(in.limits, in.use.use, in.use.bony_sites, in.figures.share_of_girth);
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

std::string risen_words(const HazardInputs& in, const Risen& risen) {
  return "inlet '" + inlet_name(in, risen.group) + "' rises from " + pressure_text(risen.before) + " to " +
         pressure_text(risen.after);
}

Hazard sealed_hazard(const HazardInputs& in, Hazard out, double to_c, Pressure atmosphere,
                     const std::string& when, const std::string& rigid) {
  if (!holds_air(in) || group_count(in) == 0) {
    out.sentence = "Not worked out: the filling is no air.";
    return out;
  }
  const Risen risen = most_risen(in, to_c, atmosphere);
  out.sentence =
      when + ", " + risen_words(in, risen) + "; a chamber that could not grow would gain " + rigid + ".";
  // Contact follows the air inside, so the share of the limit grows with it.
  const Pressure peak = in.figures.peak_anywhere * in.limits.model_factor;
  const double grown = risen.before > Pressure() ? risen.after / risen.before : 1.0;
  if (peak * grown > strictest_limit(in)) out.severity = Severity::kWarn;
  return out;
}

}  // namespace

Pressure highest_relief(const HazardInputs& in) {
  return highest_relief(in.limits, strictest_limit(in), circumferential(in), highest_gauge(in),
                        in.figures.peak_anywhere);
}

Hazard warming_hazard(const HazardInputs& in) {
  const Volume any = 100.0 * mL;
  const Pressure rigid = sealed_gauge_after(rigid_volume(any), Volume(), Pressure(), kRoom_c, kSkin_c);
  return sealed_hazard(
      in,
      {"Closed air that warms", Severity::kNote, "",
       "Vent after 5 min on the skin, then set the pressure again."},
      kSkin_c, kAtmosphere,
      "Closed off at " + number_text(kRoom_c, 3) + " °C and warmed to " + number_text(kSkin_c, 3) + " °C",
      pressure_text(rigid));
}

Hazard cabin_hazard(const HazardInputs& in) {
  const Pressure rigid =
      sealed_gauge_after(rigid_volume(100.0 * mL), Volume(), Pressure(), kRoom_c, kRoom_c, kCabin);
  return sealed_hazard(in,
                       {"Closed air in flight or on a mountain", Severity::kNote, "",
                        "Never wear it closed off in a cabin, a lift to height or a pressure chamber."},
                       kRoom_c, kCabin,
                       "Closed off on the ground and worn at " + fixed_text(kCabin / kPa, 0) + " kPa of air",
                       pressure_text(rigid));
}

Hazard source_hazard(const HazardInputs& in) {
  Hazard out{"A source stronger than the limit", Severity::kNote, "",
             "Put a relief valve between source and device; watch a gauge of its own."};
  Pressure able;
  std::string words;
  if (in.supply.syringe) {
    able = syringe_pressure(*in.supply.syringe);
    words = "A thumb pushing " + fixed_text(in.supply.syringe->thumb / newton, 0) + " N on a " +
            fixed_text(in.supply.syringe->capacity / mL, 0) + " mL syringe can reach " + pressure_text(able);
  }
  if (in.supply.pump_stall && *in.supply.pump_stall > able) {
    able = *in.supply.pump_stall;
    words = "The pump can reach " + pressure_text(able) + " before it stalls";
  }
  if (words.empty()) {
    out.severity = Severity::kWarn;
    out.sentence = "Not worked out: the plan names neither syringe nor pump.";
    return out;
  }
  const Pressure allowed = highest_relief(in);
  const bool beyond = able > allowed;
  out.sentence = words +
                 (beyond ? ", " + fixed_text(able / allowed, 0) + " times the highest relief setting of "
                         : ", below the highest relief setting of ") +
                 pressure_text(allowed) + ".";
  if (beyond && !in.supply.relief) out.severity = Severity::kWarn;
  return out;
}

Hazard relief_hazard(const HazardInputs& in) {
  const Pressure allowed = highest_relief(in);
  Hazard out{"A valve that sticks", Severity::kNote, "",
             "Fit a mechanical relief valve and test its opening with a gauge of its own."};
  const std::string rule = "at " + pressure_text(allowed) + " or less (" + in.limits.relief.source + ")";
  if (!in.supply.relief) {
    out.severity = Severity::kWarn;
    out.sentence = "The plan has no relief valve; it should open " + rule + ".";
  } else if (*in.supply.relief > allowed) {
    out.severity = Severity::kAboveLimit;
    out.sentence =
        "The relief valve opens at " + pressure_text(*in.supply.relief) + " but should open " + rule + ".";
  } else {
    out.sentence =
        "The relief valve opens at " + pressure_text(*in.supply.relief) + "; it may open " + rule + ".";
  }
  if (in.supply.relief && *in.supply.relief < highest_gauge(in)) {
    out.severity = std::max(out.severity, Severity::kWarn);
    out.sentence +=
        " That lies below the planned " + pressure_text(highest_gauge(in)) + ", which is never reached.";
  }
  return out;
}

Hazard vent_hazard(const HazardInputs& in) {
  const ReleaseRule& rule = in.limits.release;
  Hazard out{"No way out in time", Severity::kNote, "",
             "A quick release in the wearer's own hand that needs no power; time it."};
  if (!in.supply.tubing || !holds_air(in) || group_count(in) == 0) {
    out.severity = Severity::kWarn;
    out.sentence = "Not worked out: " +
                   std::string(in.supply.tubing ? "the filling is no air" : "the plan gives no tubing") +
                   "; it must fall below " + pressure_text(rule.down_to) + " within " +
                   time_text(rule.within) + ".";
    return out;
  }
  VentTime slowest;
  int group = 0;
  for (int g = 0; g < group_count(in); ++g) {
    const VentTime vent =
        vent_time(volume_curve(in.path, GroupId(g)), *in.supply.tubing, gauge_of(in, g), rule.down_to);
    if (g == 0 || vent.time > slowest.time) slowest = vent, group = g;
  }
  out.sentence = "Through the open tube inlet '" + inlet_name(in, group) + "' falls below " +
                 pressure_text(rule.down_to) + " in " + time_text(slowest.time) + "; " +
                 time_text(rule.within) + " is the most (" + rule.source + ").";
  if (slowest.reynolds > kLaminarReynolds)
    out.sentence += " The flow starts turbulent (Reynolds number " + fixed_text(slowest.reynolds, 0) +
                    "), so it takes longer.";
  if (slowest.time > rule.within) out.severity = Severity::kAboveLimit;
  return out;
}

}  // namespace wrapgauge
