#include "model/limits/pressure_finding.hpp"

#include <algorithm>

#include "model/core/number_text.hpp"
#include "model/limits/limit_place.hpp"

namespace wrapgauge {
namespace {

// What to mind at the site comes after the advice.
Phrase with_words_of(const BonySite* site, Phrase advice) {
  if (!site || site->words.empty()) return advice;
  return in_a_row({std::move(advice), table_words(site->words)});
}

Phrase advice_for(const PlaceLimit& place) {
  if (place.row->site == SiteClass::kBony) {
    const BonySite* site = place.bony_site;
    if (!site || site->kind == SiteKind::kBone)
      return with_words_of(
          site,
          Phrase::worded("Move the chamber off this place, lay a weld over it or lower the inflation."));
    return with_words_of(site, Phrase::worded("Move the device off this place or lower the inflation."));
  }
  if (place.row->site == SiteClass::kCircumferential)
    return Phrase::worded("Lower the inflation, loosen the closure or press on less of the girth.");
  return Phrase::worded(
      "Lower the inflation, spread the force over a larger chamber or hold it for a shorter time.");
}

// "4.0 kPa (30 mmHg) for a pad on a soft place, held for a session (judgement, ...)"
Phrase limit_words(const PlaceLimit& place) {
  const LimitRow& row = *place.row;
  const Phrase site =
      place.bony_site ? Phrase::worded("%1 ('%2')", {site_words(row.site), name_of(place.bony_site->name)})
                      : site_words(row.site);
  return Phrase::worded("%1 %2, %3 (%4, %5)", {figures_of(row.limit), site, use_words(row.use),
                                               table_words(row.status), table_words(row.source)});
}

// How `raised` stands to the row, after "with the model factor that is 6.3 kPa".
Phrase verdict(const PlaceLimit& place, Pressure raised) {
  const LimitRow& row = *place.row;
  if (raised > row.limit)
    return Phrase::worded("above the limit of %1. %2", {limit_words(place), advice_for(place)});
  if (raised > row.warn)
    return Phrase::worded("above the warning at %1 and below the limit of %2. %3",
                          {figures_of(row.warn), limit_words(place), advice_for(place)});
  return Phrase::worded("%1 of the limit of %2.", {percent_of(raised / row.limit), limit_words(place)});
}

// `subject` begins the sentence: "Chamber 'left'".
Finding against_row(const Phrase& subject, const std::string& where, Pressure predicted,
                    const PlaceLimit& place, double factor) {
  const LimitRow& row = *place.row;
  const Pressure raised = predicted * factor;
  if (predicted <= Pressure())
    return {Severity::kNote, where, Phrase::worded("%1 is not predicted to touch the skin.", {subject}),
            raised / row.limit};
  const Severity severity = raised > row.limit  ? Severity::kAboveLimit
                            : raised > row.warn ? Severity::kWarn
                                                : Severity::kNote;
  return {
      severity, where,
      Phrase::worded("%1 is predicted to press %2 at its highest square centimetre; with the model factor "
                     "%3 that is %4, %5",
                     {subject, figures_of(predicted), figures_of(number_text(factor, 3)), figures_of(raised),
                      verdict(place, raised)}),
      raised / row.limit, factor};
}

bool is_chamber(const ContactFigures& figures, const std::string& name) {
  return std::any_of(figures.chambers.begin(), figures.chambers.end(),
                     [&](const ChamberFigures& chamber) { return chamber.chamber == name; });
}

Pressure peak_on(const BonySite& site, const LoadPath& path, const EquilibriumState& state,
                 const ContactMap& map) {
  Pressure peak;
  for (std::size_t v = 0; v < path.sheet.skin_node.size(); ++v) {
    const Vec3 skin_point = state.positions_m.row(path.sheet.skin_node[v]);
    if (lies_on(site, skin_point)) peak = std::max(peak, map.mean_1cm2_pa[static_cast<Eigen::Index>(v)] * Pa);
  }
  return peak;
}

Finding tourniquet_finding(const LimitSet& limits, Pressure predicted) {
  const Pressure raised = predicted * limits.model_factor;
  const bool stop = raised > limits.tourniquet_stop;
  const Phrase line =
      stop ? Phrase::worded("above the tourniquet stop of %1", {figures_of(limits.tourniquet_stop)})
           : Phrase::worded("above the tourniquet caution at %1", {figures_of(limits.tourniquet_warn)});
  return {
      stop ? Severity::kStop : Severity::kWarn, "whole cuff",
      Phrase::worded("The cuff goes round the limb and is predicted to press up to %1; with the model "
                     "factor %2 that is %3, %4 (%5): it may stop the blood that flows back from the limb. "
                     "Do not wear it like this; lower the inflation or press on less of the girth.",
                     {figures_of(predicted), figures_of(number_text(limits.model_factor, 3)),
                      figures_of(raised), line, table_words(limits.tourniquet_source)}),
      raised / limits.tourniquet_stop, limits.model_factor};
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

}  // namespace

std::vector<Finding> pressure_findings(const LimitSet& limits, const LimitInputs& inputs,
                                       const LoadPath& path, const EquilibriumState& state,
                                       const ContactMap& map, const ContactFigures& figures) {
  const LimitPlaces places(limits, inputs, figures.share_of_girth);
  const Area unknown_area(1.0);  // a square metre: rows for small pads do not hold
  std::vector<Finding> out;
  const auto add = [&](const Phrase& subject, const std::string& where, Pressure peak, PlaceLimit place) {
    if (place.row) out.push_back(against_row(subject, where, peak, place, limits.model_factor));
  };
  for (const ChamberFigures& chamber : figures.chambers)
    add(Phrase::worded("Chamber '%1'", {name_of(chamber.chamber)}), chamber.chamber, chamber.peak,
        places.at(chamber.peak_at_m, chamber.contact_area));
  const std::string peak_part = english(figures.peak_part);
  if (figures.peak_anywhere > Pressure() && !is_chamber(figures, peak_part))
    add(Phrase::worded("The part '%1'", {figures.peak_part}), peak_part, figures.peak_anywhere,
        places.at(figures.peak_at_m, unknown_area));
  for (const BonySite& site : inputs.bony_sites) {
    const Pressure peak = peak_on(site, path, state, map);
    if (peak > Pressure())
      add(Phrase::worded("The device over '%1'", {name_of(site.name)}), site.name, peak,
          places.at(site.point_m, unknown_area));
  }
  return out;
}

std::vector<Finding> cuff_findings(const LimitSet& limits, const InflationSetup& setup,
                                   const ContactFigures& figures) {
  std::vector<Finding> out;
  if (figures.share_of_girth < limits.circumferential_share) return out;
  if (figures.peak_anywhere * limits.model_factor > limits.tourniquet_warn)
    out.push_back(tourniquet_finding(limits, figures.peak_anywhere));
  const Rise rise = steepest_rise(setup, figures);
  if (rise.distal) {
    out.push_back(
        {Severity::kWarn, "whole cuff",
         Phrase::worded("The mean pressure rises towards the trunk, from %1 under chamber '%2' to %3 under "
                        "chamber '%4', which hinders the blood that flows back (common practice, no source). "
                        "Inflate the chamber nearer the trunk less.",
                        {figures_of(rise.distal->mean), name_of(rise.distal->chamber),
                         figures_of(rise.proximal->mean), name_of(rise.proximal->chamber)}),
         0.0});
  }
  return out;
}

}  // namespace wrapgauge
