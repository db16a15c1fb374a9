#include "model/limits/pressure_finding.hpp"

#include <algorithm>

#include "model/contact/area_average.hpp"
#include "model/contact/skin_side.hpp"
#include "model/core/beside_limit.hpp"
#include "model/core/number_text.hpp"
#include "model/limits/advice.hpp"
#include "model/limits/deflated_state.hpp"
#include "model/limits/limit_place.hpp"
#include "model/limits/pressed_spot.hpp"

namespace wrapgauge {
namespace {

Severity severity_of(Pressure raised, const LimitRow& row) {
  return raised > row.limit ? Severity::kAboveLimit : raised > row.warn ? Severity::kWarn : Severity::kNote;
}

// Deflated it is past the line that it is past when inflated; of what is past none, more than half of it.
bool fastening_does_it(const PressedSpot& spot, double factor, bool has_closure) {
  if (!has_closure) return false;
  const Severity inflated = severity_of(spot.peak * factor, *spot.place.row);
  if (inflated == Severity::kNote) return spot.deflated > 0.5 * spot.peak;
  return severity_of(spot.deflated * factor, *spot.place.row) == inflated;
}

Cause cause_of(const PressedSpot& spot, const LimitRow* without_sites, double factor, bool has_closure) {
  const Severity here = severity_of(spot.peak * factor, *spot.place.row);
  if (!spot.sites.empty() && without_sites && severity_of(spot.peak * factor, *without_sites) < here)
    return Cause::kBone;
  if (fastening_does_it(spot, factor, has_closure)) return Cause::kFastening;
  const bool edge = spot.part.kind == PressedKind::kStrap || spot.part.kind == PressedKind::kSeam;
  return edge ? Cause::kEdge : Cause::kInflation;
}

Phrase names_of(const std::vector<const BonySite*>& sites) {
  std::vector<Phrase> names;
  for (const BonySite* site : sites) names.push_back(name_of(site->name));
  return in_a_row(std::move(names), ", ");
}

Phrase over_sites(Phrase part, const std::vector<const BonySite*>& sites) {
  if (sites.empty()) return part;
  return Phrase::worded("%1 over %2", {std::move(part), names_of(sites)});
}

Phrase row_words(const LimitRow& row) {
  return in_a_row({site_words(row.site), use_words(row.use)}, ", ");
}

// "3.0 kPa (23 mmHg) for a pad on a soft place, held for a session (judgement, ...)"
Phrase limit_words(const LimitRow& row) {
  return Phrase::worded("%1 %2 (%3, %4)", {limit_figures(row.limit), row_words(row), table_words(row.status),
                                           table_words(row.source)});
}

// How `raised` stands to the row: "4.8 kPa (36 mmHg), above the limit of ...".
Phrase verdict(Pressure raised, const LimitRow& row) {
  if (raised > row.limit)
    return Phrase::worded("%1, above the limit of %2", {figures_beside(raised, row.limit), limit_words(row)});
  if (raised > row.warn)
    return Phrase::worded("%1, above the warning at %2 and below the limit of %3",
                          {figures_beside(raised, row.warn), limit_figures(row.warn), limit_words(row)});
  return Phrase::worded("%1, %2 of the limit of %3", {figures_beside(raised, row.warn),
                                                      percent_beside(raised / row.limit), limit_words(row)});
}

// What to mind at the sites comes after the advice.
Phrase with_words_of(const std::vector<const BonySite*>& sites, Phrase sentence) {
  std::vector<Phrase> all{std::move(sentence)};
  for (const BonySite* site : sites)
    if (!site->words.empty()) all.push_back(table_words(site->words));
  return all.size() > 1 ? in_a_row(std::move(all)) : all.front();
}

Finding untouched(const PressedSpot& spot) {
  Finding finding{Severity::kNote, spot.part.name,
                  Phrase::worded("%1 is not predicted to touch the skin.", {as_subject(spot.part)})};
  finding.place = as_place(spot.part);
  return finding;
}

Finding against_row(const PressedSpot& spot, const LimitRow* without_sites, double factor, bool has_closure) {
  if (spot.peak <= Pressure()) return untouched(spot);
  const LimitRow& row = *spot.place.row;
  const Pressure raised = spot.peak * factor;
  Finding finding{severity_of(raised, row), spot.part.name, {}, raised / row.limit, factor};
  finding.place = over_sites(as_place(spot.part), spot.sites);
  finding.measured = Measured{Amount::kPressure, spot.peak.si(), raised.si(), row.limit.si(), row_words(row)};
  finding.cause = cause_of(spot, without_sites, factor, has_closure);
  finding.source_key = std::string(site_name(row.site)) + ", " + std::string(use_name(row.use));
  finding.at_m = spot.at_m;
  finding.sentence = Phrase::worded("%1: %2 on its worst 1 cm². With the %3 factor %4.",
                                    {over_sites(as_subject(spot.part), spot.sites), figures_of(spot.peak),
                                     figures_of(number_text(factor, 3)), verdict(raised, row)});
  if (finding.severity == Severity::kNote) return finding;
  finding.action =
      advice({.part = spot.part.kind,
              .row = row.site,
              .site = spot.sites.empty() ? std::nullopt : std::optional(spot.sites.front()->kind),
              .fastening_alone = fastening_does_it(spot, factor, has_closure),
              .has_closure = has_closure});
  finding.sentence = with_words_of(spot.sites, in_a_row({finding.sentence, finding.action}));
  return finding;
}

bool has_closure(const PressedState& pressed) {
  return pressed.setup.layout.closure.has_value();
}

Phrase let_blood_through(bool stop, bool fastening_alone) {
  if (!stop)
    return fastening_alone ? Phrase::worded("Fasten it more loosely.")
                           : Phrase::worded("Lower the pressure or press on less of the girth.");
  return fastening_alone
             ? Phrase::worded("Do not wear it like this: fasten it more loosely.")
             : Phrase::worded("Do not wear it like this: lower the pressure or press on less of the girth.");
}

Finding tourniquet_finding(const LimitSet& limits, const PressedState& pressed) {
  const Pressure predicted = pressed.figures.peak_anywhere, raised = predicted * limits.model_factor;
  const bool stop = raised > limits.tourniquet_stop;
  const Pressure crossed = stop ? limits.tourniquet_stop : limits.tourniquet_warn;
  const Eigen::VectorXd& deflated_pa = pressed.deflated_1cm2_pa;
  const bool fastening =
      deflated_pa.size() > 0 && deflated_pa.maxCoeff() * limits.model_factor > crossed.si();
  const Phrase line = stop ? Phrase::worded("stop at %1", {limit_figures(crossed)})
                           : Phrase::worded("caution from %1", {limit_figures(crossed)});
  Finding finding{stop ? Severity::kStop : Severity::kWarn,
                  "whole cuff",
                  {},
                  raised / limits.tourniquet_stop,
                  limits.model_factor};
  finding.place = Phrase::worded("Whole cuff, blood held back");
  finding.measured = Measured{Amount::kPressure, predicted.si(), raised.si(), limits.tourniquet_stop.si(),
                              Phrase::worded("tourniquet stop, anything round a limb")};
  finding.cause = fastening ? Cause::kFastening : Cause::kInflation;
  finding.action = let_blood_through(stop, fastening);
  finding.source_key = "tourniquet";
  finding.at_m = pressed.figures.peak_at_m;
  finding.sentence = Phrase::worded(
      "This cuff may hold back the blood beyond it: up to %1 on its worst 1 cm², with the %2 factor %3; %4 "
      "(%5). %6",
      {figures_of(predicted), figures_of(number_text(limits.model_factor, 3)),
       figures_beside(raised, crossed), line, table_words(limits.tourniquet_source), finding.action});
  return finding;
}

// The two chambers between which the mean pressure rises most towards the trunk (+y of the layout).
struct Rise {
  const ChamberFigures* distal = nullptr;
  const ChamberFigures* proximal = nullptr;
};

double centre_y_m(const Chamber& chamber) {
  const Bounds2 box = bounds(chamber.boundary_m);
  return 0.5 * (box.low.y() + box.high.y());
}

Rise steepest_rise(const InflationSetup& setup, const ContactFigures& figures) {
  constexpr double kApart_m = 0.010;  // nearer than this, two chambers count as side by side
  constexpr double kShare = 1.05;     // and a difference within the mesh error is no rise
  const Pressure least = 0.1 * kPa;
  const std::size_t count = std::min(figures.chambers.size(), setup.layout.chambers.size());
  Rise worst;
  for (std::size_t d = 0; d < count; ++d)
    for (std::size_t p = 0; p < count; ++p) {
      const ChamberFigures &distal = figures.chambers[d], &proximal = figures.chambers[p];
      if (centre_y_m(setup.layout.chambers[p]) - centre_y_m(setup.layout.chambers[d]) < kApart_m) continue;
      const Pressure rise = proximal.mean - distal.mean;
      if (rise < least || proximal.mean < distal.mean * kShare) continue;
      if (!worst.distal || rise > worst.proximal->mean - worst.distal->mean) worst = {&distal, &proximal};
    }
  return worst;
}

Finding rise_finding(const Rise& rise) {
  Finding finding{Severity::kWarn, "whole cuff", {}};
  finding.place = Phrase::worded("Whole cuff, towards the trunk");
  finding.cause = Cause::kInflation;
  finding.action = Phrase::worded("Inflate the chamber nearer the trunk less.");
  finding.source_key = "rise towards the trunk";
  finding.at_m = rise.proximal->peak_at_m;
  finding.sentence = Phrase::worded(
      "The mean pressure rises towards the trunk, from %1 under chamber '%2' to %3 under chamber '%4', which "
      "hinders the blood that flows back (common practice, no source). %5",
      {figures_of(rise.distal->mean), name_of(rise.distal->chamber), figures_of(rise.proximal->mean),
       name_of(rise.proximal->chamber), finding.action});
  return finding;
}

}  // namespace

PressedState pressed_state(const InflationSetup& setup, const LoadPath& path, const EquilibriumState& state,
                           const ContactMap& map, const ContactFigures& figures) {
  PressedState pressed{setup, path, state, map, figures, {}};
  const EquilibriumState* deflated = deflated_state(setup, path);
  if (deflated)
    pressed.deflated_1cm2_pa =
        disc_average_pa(skin_side(setup, path.sheet, deflated->positions_m), deflated->contact_pressure_pa);
  return pressed;
}

std::vector<Finding> pressure_findings(const LimitSet& limits, const LimitInputs& inputs,
                                       const PressedState& pressed) {
  LimitInputs elsewhere = inputs;
  elsewhere.bony_sites.clear();
  const LimitRow* without_sites =
      LimitPlaces(limits, elsewhere, pressed.figures.share_of_girth).at(Vec3::Zero(), Area(1.0)).row;
  std::vector<Finding> out;
  for (const PressedSpot& spot : pressed_spots(limits, inputs, pressed))
    out.push_back(against_row(spot, without_sites, limits.model_factor, has_closure(pressed)));
  return out;
}

std::vector<Finding> cuff_findings(const LimitSet& limits, const PressedState& pressed) {
  std::vector<Finding> out;
  if (pressed.figures.share_of_girth < limits.circumferential_share) return out;
  if (pressed.figures.peak_anywhere * limits.model_factor > limits.tourniquet_warn)
    out.push_back(tourniquet_finding(limits, pressed));
  const Rise rise = steepest_rise(pressed.setup, pressed.figures);
  if (rise.distal) out.push_back(rise_finding(rise));
  return out;
}

}  // namespace wrapgauge
