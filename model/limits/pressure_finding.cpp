#include "model/limits/pressure_finding.hpp"

#include <algorithm>

#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/limits/limit_place.hpp"

namespace wrapgauge {
namespace {

std::string words_of(const BonySite* site) {
  return site && !site->words.empty() ? " " + site->words : "";
}

std::string advice_for(const PlaceLimit& place) {
  if (place.row->site == SiteClass::kBony) {
    const BonySite* site = place.bony_site;
    if (!site || site->kind == SiteKind::kBone)
      return "Move the chamber off this place, lay a weld over it or lower the inflation." + words_of(site);
    return "Move the device off this place or lower the inflation." + words_of(site);
  }
  if (place.row->site == SiteClass::kCircumferential)
    return "Lower the inflation, loosen the closure or press on less of the girth.";
  return "Lower the inflation, spread the force over a larger chamber or hold it for a shorter time.";
}

std::string limit_words(const PlaceLimit& place, Pressure value) {
  const LimitRow& row = *place.row;
  const std::string site = place.bony_site ? " ('" + place.bony_site->name + "')" : "";
  return pressure_text(value) + " " + std::string(site_text(row.site)) + site + ", " +
         std::string(use_text(row.use)) + " (" + row.status + ", " + row.source + ")";
}

// `subject` begins the sentence: "Chamber 'left'".
Finding against_row(const std::string& subject, const std::string& where, Pressure predicted,
                    const PlaceLimit& place, double factor) {
  const LimitRow& row = *place.row;
  const Pressure raised = predicted * factor;
  Finding finding{Severity::kNote, where, "", raised / row.limit};
  if (predicted <= Pressure()) {
    finding.sentence = subject + " is not predicted to touch the skin.";
    return finding;
  }
  finding.sentence = subject + " is predicted to press " + pressure_text(predicted) +
                     " at its highest square centimetre; with the model factor " + number_text(factor, 3) +
                     " that is " + pressure_text(raised) + ", ";
  if (raised > row.limit) {
    finding.severity = Severity::kAboveLimit;
    finding.sentence += "above the limit of " + limit_words(place, row.limit) + ". " + advice_for(place);
  } else if (raised > row.warn) {
    finding.severity = Severity::kWarn;
    finding.sentence += "above the warning at " + pressure_text(row.warn) + " and below the limit of " +
                        limit_words(place, row.limit) + ". " + advice_for(place);
  } else {
    finding.sentence += fixed_text(100.0 * finding.share_of_limit, 0) + " % of the limit of " +
                        limit_words(place, row.limit) + ".";
  }
  return finding;
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
  const Pressure line = stop ? limits.tourniquet_stop : limits.tourniquet_warn;
  return {stop ? Severity::kStop : Severity::kWarn, "whole cuff",
          "The cuff goes round the limb and is predicted to press up to " + pressure_text(predicted) +
              "; with the model factor " + number_text(limits.model_factor, 3) + " that is " +
              pressure_text(raised) + ", above the tourniquet " + (stop ? "stop of " : "caution at ") +
              pressure_text(line) + " (" + limits.tourniquet_source +
              "): it may stop the blood that flows back from the limb. Do not wear it like this; lower the "
              "inflation "
              "or press on less of the girth.",
          raised / limits.tourniquet_stop};
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
  const LimitPlaces places(limits, inputs.use, inputs.bony_sites, figures.share_of_girth);
  const Area unknown_area(1.0);  // a square metre: rows for small pads do not hold
  std::vector<Finding> out;
  const auto add = [&](const std::string& subject, const std::string& where, Pressure peak,
                       PlaceLimit place) {
    if (place.row) out.push_back(against_row(subject, where, peak, place, limits.model_factor));
  };
  for (const ChamberFigures& chamber : figures.chambers)
    add("Chamber '" + chamber.chamber + "'", chamber.chamber, chamber.peak,
        places.at(chamber.peak_at_m, chamber.contact_area));
  if (figures.peak_anywhere > Pressure() && !is_chamber(figures, figures.peak_part))
    add("The part '" + figures.peak_part + "'", figures.peak_part, figures.peak_anywhere,
        places.at(figures.peak_at_m, unknown_area));
  for (const BonySite& site : inputs.bony_sites) {
    const Pressure peak = peak_on(site, path, state, map);
    if (peak > Pressure())
      add("The device over '" + site.name + "'", site.name, peak, places.at(site.point_m, unknown_area));
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
         "The mean pressure rises towards the trunk, from " + pressure_text(rise.distal->mean) +
             " under chamber '" + rise.distal->chamber + "' to " + pressure_text(rise.proximal->mean) +
             " under chamber '" + rise.proximal->chamber +
             "', which hinders the blood that flows back (common practice, no source). Inflate the chamber "
             "nearer the trunk less.",
         0.0});
  }
  return out;
}

}  // namespace wrapgauge
