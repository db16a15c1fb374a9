#include "model/limits/hazard.hpp"

#include <algorithm>
#include <limits>

#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/time_text.hpp"
#include "model/limits/air_hazard.hpp"
#include "model/limits/pneumatics.hpp"

namespace wrapgauge {
namespace {

const ChamberFigures* largest(const HazardInputs& in, double (*figure)(const ChamberFigures&)) {
  const ChamberFigures* found = nullptr;
  for (const ChamberFigures& chamber : in.figures.chambers)
    if (!found || figure(chamber) > figure(*found)) found = &chamber;
  return found;
}

Hazard bulge(const HazardInputs& in) {
  Hazard out{"A bulge that runs away", Severity::kNote, "",
             "Fill slowly; stop filling when volume grows and pressure does not."};
  if (in.path.limit_point && in.path.limit_point->kind == LimitKind::kRunsAway) {
    out.severity = Severity::kAboveLimit;
    out.sentence = "The chambers hold no more than " + pressure_text(in.path.limit_point->pressure) +
                   ", at " + fixed_text(in.path.limit_point->volume / mL, 0) +
                   " mL; beyond that one of them balloons.";
    return out;
  }
  const ChamberFigures* most = largest(in, [](const ChamberFigures& c) { return c.gauge.si(); });
  out.sentence = most ? "No bulge ran away up to " + pressure_text(most->gauge) + " and " +
                            fixed_text(most->volume / mL, 1) + " mL in '" + most->chamber + "'."
                      : "There is no chamber.";
  return out;
}

Hazard tear(const HazardInputs& in) {
  Hazard out{"A sheet that tears", Severity::kNote, "There is no chamber.",
             "Burst two samples on the bench, off the body, at three times the planned pressure or more."};
  if (const ChamberFigures* most = largest(in, [](const ChamberFigures& c) { return c.share_of_break; })) {
    out.sentence = "The most stretched sheet, of '" + most->chamber + "', is at " +
                   fixed_text(most->stretch_max, 2) + " times its length, " +
                   fixed_text(100.0 * most->share_of_break, 0) + " % of its elongation at break.";
    const bool above =
        most->share_of_break > in.limits.share_of_break_limit || most->stretch_max > in.limits.stretch_limit;
    out.severity = above                                        ? Severity::kAboveLimit
                   : most->stretch_max > in.limits.stretch_warn ? Severity::kWarn
                                                                : Severity::kNote;
  }
  return out;
}

Hazard seam(const HazardInputs& in) {
  Hazard out{
      "A seam that opens", Severity::kNote, "There is no chamber.",
      "Hold at 1.5 times the planned pressure for 10 min, off the body, before each new cast is worn."};
  if (const ChamberFigures* most = largest(in, [](const ChamberFigures& c) { return c.seam_tension.si(); }))
    out.sentence = "The first seam to watch is at '" + most->chamber + "', pulled by " +
                   number_text(most->seam_tension / N_per_mm, 2) +
                   " N/mm; what a fused seam holds is not known here.";
  return out;
}

}  // namespace

Pressure highest_relief(const LimitSet& limits, Pressure strictest_limit, bool circumferential,
                        Pressure gauge, Pressure predicted_peak) {
  const Pressure cap = circumferential ? limits.relief.cuff : limits.relief.pad;
  const Pressure skin = std::min(cap, strictest_limit * limits.relief.times_limit);
  const Pressure raised = predicted_peak * limits.model_factor;
  return raised > gauge ? skin * (gauge / raised) : skin;
}

Hazard heat_hazard(const HeatRule& rule, const Filling& filling, bool sustained) {
  Hazard out{"Heat or cold", Severity::kNote, "",
             "Measure the skin side before wearing; cloth between pad and skin."};
  if (!filling.celsius) {
    out.sentence = "The plan gives no temperature, so the filling is taken to be at room temperature.";
    return out;
  }
  const double celsius = *filling.celsius;
  constexpr double kCool_c = 5.0;  // above the coldest: from here the time counts as time cold
  const bool hot = celsius > kSkin_c, cold = celsius < rule.cold_c + kCool_c;
  const Time longest = hot ? rule.hot_time : rule.cold_time;
  const std::string time = filling.contact ? time_text(*filling.contact) : "a time the plan does not give";
  out.sentence =
      "The filling starts at " + number_text(celsius, 3) + " °C for " + time + "; the skin side may be " +
      (hot ? "at most " + number_text(rule.hot_c, 3) : "no less than " + number_text(rule.cold_c, 3)) +
      " °C for " + time_text(longest) + " (" + rule.source + ").";
  const bool too_far = hot ? celsius > rule.hot_c : celsius < rule.cold_c;
  const bool too_long = (hot || cold) && (!filling.contact || *filling.contact > longest);
  if (too_far || too_long) out.severity = Severity::kAboveLimit;
  for (const BurnThreshold& burn : rule.burn)
    if (celsius >= burn.celsius && (!filling.contact || *filling.contact >= burn.contact)) {
      out.severity = Severity::kStop;
      out.sentence += " Skin burns at " + number_text(burn.celsius, 3) + " °C in " + time_text(burn.contact) +
                      " (" + rule.burn_source + ").";
      break;
    }
  if (hot && celsius > rule.hot_stop_c) out.severity = Severity::kStop;
  if (hot && sustained) {
    out.severity = std::max(out.severity, Severity::kAboveLimit);
    out.sentence += " Heat and held pressure together starve the skin: never both.";
  }
  return out;
}

std::vector<Hazard> hazards(const HazardInputs& inputs) {
  return {bulge(inputs),
          tear(inputs),
          seam(inputs),
          warming_hazard(inputs),
          cabin_hazard(inputs),
          source_hazard(inputs),
          relief_hazard(inputs),
          vent_hazard(inputs),
          heat_hazard(inputs.limits.heat, inputs.filling, inputs.use.use == UsePattern::kSustained)};
}

}  // namespace wrapgauge
