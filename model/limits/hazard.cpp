#include "model/limits/hazard.hpp"

#include <algorithm>
#include <limits>

#include "model/core/number_text.hpp"
#include "model/limits/air_hazard.hpp"
#include "model/limits/body_hazard.hpp"
#include "model/limits/pneumatics.hpp"

namespace wrapgauge {
namespace {

const ChamberFigures* largest(const HazardInputs& in, double (*figure)(const ChamberFigures&)) {
  const ChamberFigures* found = nullptr;
  for (const ChamberFigures& chamber : in.figures.chambers)
    if (!found || figure(chamber) > figure(*found)) found = &chamber;
  return found;
}

Phrase millilitres(Volume volume, int decimals) {
  return figures_of(fixed_text(volume / mL, decimals) + " mL");
}

Hazard bulge(const HazardInputs& in) {
  Hazard out{HazardKind::kBulge, Phrase::worded("A bulge that runs away"), Severity::kNote,
             Phrase::worded("There is no chamber."),
             Phrase::worded("Fill slowly; stop filling when volume grows and pressure does not.")};
  if (in.path.limit_point && in.path.limit_point->kind == LimitKind::kRunsAway) {
    out.severity = Severity::kAboveLimit;
    out.sentence = Phrase::worded(
        "The chambers hold no more than %1, at %2; beyond that one of them runs away.",
        {figures_of(in.path.limit_point->pressure), millilitres(in.path.limit_point->volume, 0)});
    return out;
  }
  if (const ChamberFigures* most = largest(in, [](const ChamberFigures& c) { return c.gauge.si(); }))
    out.sentence =
        Phrase::worded("No bulge ran away up to %1 and %2 in '%3'.",
                       {figures_of(most->gauge), millilitres(most->volume, 1), name_of(most->chamber)});
  return out;
}

Hazard tear(const HazardInputs& in) {
  Hazard out{
      HazardKind::kBurst, Phrase::worded("A sheet that tears"), Severity::kNote,
      Phrase::worded("There is no chamber."),
      Phrase::worded("Burst two samples on the bench, off the body, at three times the planned pressure "
                     "or more.")};
  if (const ChamberFigures* most = largest(in, [](const ChamberFigures& c) { return c.share_of_break; })) {
    out.sentence = Phrase::worded(
        "The most stretched sheet, of '%1', is at %2 times its length, %3 of its elongation at break.",
        {name_of(most->chamber), figures_of(fixed_text(most->stretch_max, 2)),
         percent_of(most->share_of_break)});
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
      HazardKind::kSeam, Phrase::worded("A seam that opens"), Severity::kNote,
      Phrase::worded("There is no chamber."),
      Phrase::worded("Hold at 1.5 times the planned pressure for 10 min, off the body, before each new "
                     "cast is worn.")};
  const auto& seams = in.figures.seams;  // as the finding ranks them: one page says one figure
  if (!seams.empty() && seams.front().largest > LineTension())
    out.sentence = Phrase::worded(
        "The first seam to watch: %1, pulled by %2. What a fused seam holds is not known here.",
        {seams.front().seam, figures_of(number_text(seams.front().largest / N_per_mm, 2) + " N/mm")});
  else if (const ChamberFigures* most =
               largest(in, [](const ChamberFigures& c) { return c.seam_tension.si(); }))
    out.sentence = Phrase::worded(
        "The first seam to watch is at '%1', pulled by %2; what a fused seam holds is "
        "not known here.",
        {name_of(most->chamber), figures_of(number_text(most->seam_tension / N_per_mm, 2) + " N/mm")});
  return out;
}

Phrase degrees(double celsius) {
  return figures_of(number_text(celsius, 3) + " °C");
}

// How warm the filling starts and how warm the skin side may be.
Phrase heat_words(const HeatRule& rule, const Filling& filling, bool hot, Time longest) {
  const Phrase time =
      filling.contact ? figures_of(*filling.contact) : Phrase::worded("a time the plan does not give");
  const Phrase skin_side = hot ? Phrase::worded("at most %1", {degrees(rule.hot_c)})
                               : Phrase::worded("no less than %1", {degrees(rule.cold_c)});
  return Phrase::worded(
      "The filling starts at %1 for %2; the skin side may be %3 for %4 (%5).",
      {degrees(*filling.celsius), time, skin_side, figures_of(longest), table_words(rule.source)});
}

const BurnThreshold* burn_reached(const HeatRule& rule, const Filling& filling) {
  for (const BurnThreshold& burn : rule.burn)
    if (*filling.celsius >= burn.celsius && (!filling.contact || *filling.contact >= burn.contact))
      return &burn;
  return nullptr;
}

}  // namespace

Hazard heat_hazard(const HeatRule& rule, const Filling& filling, bool sustained) {
  Hazard out{
      HazardKind::kHeat, Phrase::worded("Heat or cold"), Severity::kNote,
      Phrase::worded("The plan gives no temperature, so the filling is taken to be at room temperature."),
      Phrase::worded("Measure the skin side before wearing; cloth between pad and skin.")};
  if (!filling.celsius) return out;
  const double celsius = *filling.celsius;
  constexpr double kCool_c = 5.0;  // above the coldest: from here the time counts as time cold
  const bool hot = celsius > kSkin_c, cold = celsius < rule.cold_c + kCool_c;
  const Time longest = hot ? rule.hot_time : rule.cold_time;
  std::vector<Phrase> said{heat_words(rule, filling, hot, longest)};
  const bool too_far = hot ? celsius > rule.hot_c : celsius < rule.cold_c;
  const bool too_long = (hot || cold) && (!filling.contact || *filling.contact > longest);
  if (too_far || too_long) out.severity = Severity::kAboveLimit;
  if (const BurnThreshold* burn = burn_reached(rule, filling)) {
    out.severity = Severity::kStop;
    said.push_back(
        Phrase::worded("Skin burns at %1 in %2 (%3).",
                       {degrees(burn->celsius), figures_of(burn->contact), table_words(rule.burn_source)}));
  }
  if (hot && celsius > rule.hot_stop_c) out.severity = Severity::kStop;
  if (hot && sustained) {
    out.severity = std::max(out.severity, Severity::kAboveLimit);
    said.push_back(Phrase::worded("Heat and held pressure together starve the skin: never both."));
  }
  out.sentence = in_a_row(std::move(said));
  return out;
}

std::vector<Hazard> hazards(const HazardInputs& inputs) {
  return {source_hazard(inputs),
          vein_hazard(inputs),
          nerve_hazard(inputs),
          compartment_hazard(inputs),
          bulge(inputs),
          tear(inputs),
          seam(inputs),
          shear_hazard(inputs),
          trapped_hazard(inputs),
          vent_hazard(inputs),
          tube_hazard(),
          fall_hazard(),
          stuck_hazard(inputs),
          power_hazard(inputs),
          heat_hazard(inputs.limits.heat, inputs.filling, inputs.use.use == UsePattern::kSustained),
          warming_hazard(inputs),
          rising_hazard(inputs),
          allergy_hazard(),
          uncured_hazard(),
          latex_hazard(),
          dirt_hazard()};
}

}  // namespace wrapgauge
