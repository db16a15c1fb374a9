#include "model/io/writers/summary_json.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

#include "model/core/rounded_down.hpp"
#include "model/note/cautions.hpp"
#include "model/note/verdict.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

// Three decimals; a number that is not finite becomes null in JSON.
double rounded(double value, double decimals = 1e3) {
  const double result = std::round(value * decimals) / decimals;
  return result == 0.0 ? 0.0 : result;
}

void put_pressure(Json& json, const std::string& name, Pressure pressure) {
  json[name + "_kPa"] = rounded(pressure / kPa);
  json[name + "_mmHg"] = rounded(pressure / mmHg, 10.0);
}

// A setting is never rounded up.
void put_setting(Json& json, const std::string& name, Pressure setting) {
  json[name + "_kPa"] = rounded(setting / kPa);
  json[name + "_mmHg"] = rounded(rounded_down(setting / mmHg, 0.1), 10.0);
}

Json point_mm(const Vec3& point_m) {
  return {rounded(point_m.x() * 1e3), rounded(point_m.y() * 1e3), rounded(point_m.z() * 1e3)};
}

Json chamber_json(const ChamberFigures& chamber) {
  Json json;
  json["chamber"] = chamber.chamber;
  put_pressure(json, "gauge", chamber.gauge);
  json["volume_mL"] = rounded(chamber.volume / mL);
  put_pressure(json, "mean", chamber.mean);
  put_pressure(json, "peak_1cm2", chamber.peak);
  put_pressure(json, "p95", chamber.p95);
  json["peak_at_mm"] = point_mm(chamber.peak_at_m);
  json["peak_at_flat_mm"] = {rounded(chamber.peak_at_flat_m.x() * 1e3),
                             rounded(chamber.peak_at_flat_m.y() * 1e3)};
  json["drawn_area_cm2"] = rounded(chamber.drawn_area / cm2);
  json["contact_area_cm2"] = rounded(chamber.contact_area / cm2);
  json["contact_fraction"] = rounded(chamber.contact_fraction);
  json["force_N"] = rounded(chamber.force / newton);
  json["stretch_max"] = rounded(chamber.stretch_max, 1e4);
  json["share_of_elongation_at_break"] = rounded(chamber.share_of_break, 1e4);
  json["seam_tension_N_per_mm"] = rounded(chamber.seam_tension / N_per_mm, 1e4);
  json["indentation_max_mm"] = rounded(chamber.indentation_max / mm);
  json["tissue_strain"] = rounded(chamber.tissue_strain, 1e4);
  return json;
}

Json seams_json(const ContactFigures& figures) {
  Json json = Json::array();
  for (const SeamFigures& seam : figures.seams)
    json.push_back({{"seam", english(seam.seam)},
                    {"inset", seam.inset},
                    {"largest_N_per_mm", rounded(seam.largest / N_per_mm, 1e4)},
                    {"mean_N_per_mm", rounded(seam.mean / N_per_mm, 1e4)},
                    {"largest_over_mean", rounded(seam.concentration)},
                    {"at_flat_mm", {rounded(seam.at_flat_m.x() * 1e3), rounded(seam.at_flat_m.y() * 1e3)}},
                    {"sheet", english(seam.sheet)},
                    {"length_mm", rounded(seam.length / mm)}});
  return json;
}

Json whole_json(const ContactFigures& figures) {
  Json json;
  put_pressure(json, "peak_1cm2", figures.peak_anywhere);
  json["peak_part"] = english(figures.peak_part);
  json["peak_at_mm"] = point_mm(figures.peak_at_m);
  json["share_of_girth"] = rounded(figures.share_of_girth);
  json["total_force_N"] = rounded(figures.total_force / newton);
  return json;
}

// Empty words are null, so that a reader asks one thing and not two.
Json words_or_null(const std::string& words) {
  return words.empty() ? Json(nullptr) : Json(words);
}

struct AmountUnit {
  const char *amount, *unit;
  double scale;  // from SI
};

AmountUnit unit_of(Amount amount) {
  switch (amount) {
    case Amount::kStrain:
      return {"tissue strain", "1", 1.0};
    case Amount::kStretch:
      return {"sheet stretch", "1", 1.0};
    case Amount::kExposure:
      return {"exposure", "kPa min", 1.0 / kPa_min.si()};
    case Amount::kPressure:
      break;
  }
  return {"pressure", "kPa", 1e-3};
}

// Six decimals: a value just above its limit stands above it here too.
Json measured_json(const std::optional<Measured>& measured) {
  if (!measured) return nullptr;
  const AmountUnit unit = unit_of(measured->amount);
  const auto number = [&](double value) { return rounded(value * unit.scale, 1e6); };
  return {{"amount", unit.amount},
          {"unit", unit.unit},
          {"predicted", number(measured->predicted)},
          {"with_factor", number(measured->with_factor)},
          {"limit", number(measured->limit)},
          {"row", english(measured->row)}};
}

Json finding_json(const Finding& finding) {
  return {{"severity", severity_text(finding.severity)},
          {"where", finding.where},
          {"place", english(place_of(finding))},
          {"sentence", english(finding.sentence)},
          {"share_of_limit", rounded(finding.share_of_limit, 1e6)},
          {"model_factor", finding.model_factor ? Json(*finding.model_factor) : Json(nullptr)},
          {"measured", measured_json(finding.measured)},
          {"cause", words_or_null(std::string(cause_text(finding.cause)))},
          {"action", words_or_null(english(finding.action))},
          {"source_key", words_or_null(finding.source_key)},
          {"at_mm", finding.at_m ? point_mm(*finding.at_m) : Json(nullptr)},
          {"comes_first", finding.comes_first}};
}

Json site_json(const BonySite& site) {
  return {{"name", site.name},
          {"kind", site_kind_name(site.kind)},
          {"point_mm", point_mm(site.point_m)},
          {"radius_mm", rounded(site.radius / mm)},
          {"tissue_depth_mm", rounded(site.tissue_depth / mm)},
          {"status", words_or_null(site.status)},
          {"words", words_or_null(site.words)}};
}

// Who and where: what the limits were chosen by.
Json place_json(const Summary& summary) {
  Json json = {{"part", summary.part ? Json(body_part_name(*summary.part)) : Json(nullptr)},
               {"side", summary.side ? Json(side_name(*summary.side)) : Json(nullptr)},
               {"sites_known", summary.sites_known},
               {"bone_anywhere_mm",
                summary.bone_anywhere ? Json(rounded(*summary.bone_anywhere / mm)) : Json(nullptr)},
               {"sites_confirmed", nullptr},
               {"bony_sites", Json::array()},
               {"tissue_confirmed", summary.tissue_confirmed},
               {"cleared_by", nullptr}};
  if (const auto& word = summary.sites_confirmed)
    json["sites_confirmed"] = {{"who", word->who}, {"when", word->when}, {"why", word->why}};
  for (const BonySite& site : summary.bony_sites) json["bony_sites"].push_back(site_json(site));
  if (const auto& by = summary.cleared_by)
    json["cleared_by"] = {{"name", by->name}, {"role", by->role}, {"date", by->date}};
  return json;
}

// What is not given is null: a cell to fill.
Json wearers_json(const Wearers& wearers) {
  return {{"population", words_or_null(wearers.population)},
          {"number", wearers.number ? Json(*wearers.number) : Json(nullptr)},
          {"posture", wearers.posture ? Json(wearer_posture_name(*wearers.posture)) : Json(nullptr)},
          {"above_heart_cm",
           wearers.above_heart ? Json(rounded(*wearers.above_heart / mm / 10.0)) : Json(nullptr)},
          {"watched_by", words_or_null(wearers.watched_by)},
          {"how_they_tell", words_or_null(wearers.how_they_tell)},
          {"missing", wearers.missing()}};
}

Json row_json(const LimitRow& row) {
  Json json = {{"site", site_name(row.site)}, {"use", use_name(row.use)}};
  put_pressure(json, "warn", row.warn);
  put_pressure(json, "limit", row.limit);
  json["source"] = row.source;
  json["status"] = row.status;
  return json;
}

Json limits_json(const Summary& summary) {
  Json json = {{"name", summary.limits_name},
               {"use", summary.use},
               {"override", summary.limits_override ? Json(*summary.limits_override) : Json(nullptr)},
               {"tables_differ", summary.tables_differ},
               {"rows", Json::array()}};
  for (const LimitRow& row : summary.rows_in_use) json["rows"].push_back(row_json(row));
  return json;
}

// Null when the plan gives no session.
Json exposure_json(const Summary& summary) {
  if (!summary.exposure) return nullptr;
  const SkinExposure& exposure = *summary.exposure;
  Json json = {{"session_min", rounded(exposure.worst.session / minute)},
               {"worst_part", english(exposure.worst_part)},
               {"share_of_allowed", rounded(exposure.worst_share)},
               {"product_kPa_min", rounded(exposure.worst.product / kPa_min)},
               {"allowed_kPa_min", rounded(allowed_product(exposure.worst_row) / kPa_min)},
               {"longest_hold_s", rounded(exposure.worst.longest_hold / second)},
               {"duty", rounded(exposure.worst.duty)}};
  put_pressure(json, "still_pressed_when_vented", exposure.still_pressed);
  json["first_check_min"] = rounded(exposure.first_check / minute);
  json["rest_after_min"] = rounded(exposure.rest_after / minute);
  json["broken"] = Json::array();
  for (const BrokenTime& broken : exposure.broken) json["broken"].push_back(english(broken.words));
  return json;
}

Json audit_json(const Audit& audit) {
  return {{"lateral_balance", rounded(audit.lateral_balance, 1e6)},
          {"axial_balance", rounded(audit.axial_balance, 1e6)},
          {"push_along_axis_N", rounded(audit.push_along_axis / newton)},
          {"cut_balance", rounded(audit.cut_balance, 1e6)},
          {"cuts", audit.cuts},
          {"largest_residual_N", rounded(audit.residual_n, 1e9)}};
}

Json mesh_json(const Summary& summary) {
  Json json = {{"edge_mm", rounded(summary.mesh.edge / mm)},
               {"seam_edge_mm", rounded(summary.mesh.seam_edge / mm)},
               {"nodes", summary.mesh.nodes},
               {"triangles", summary.mesh.triangles}};
  json["error"] = nullptr;
  if (summary.mesh_error)
    json["error"] = {{"coarse_edge_mm", rounded(summary.mesh_error->coarse_edge / mm)},
                     {"worst_mean_difference_kPa", rounded(summary.mesh_error->worst_mean_difference / kPa)},
                     {"peak_difference_kPa", rounded(summary.mesh_error->peak_difference / kPa)}};
  return json;
}

void put_difference(Json& json, Pressure shown, Pressure other) {
  json["shown_kPa"] = rounded(shown / kPa);
  json["other_kPa"] = rounded(other / kPa);
  json["shown_minus_other_kPa"] = rounded((shown - other) / kPa);
}

Json comparison_json(const FiguresDifference& difference) {
  Json json = {{"other", difference.other}, {"problem", nullptr}, {"chambers", Json::array()}};
  if (!difference.problem.empty()) {
    json["problem"] = difference.problem;
    return json;
  }
  for (const ChamberDifference& chamber : difference.chambers) {
    Json one = {{"chamber", chamber.chamber}};
    put_difference(one["mean"], chamber.mean, chamber.mean_other);
    put_difference(one["peak_1cm2"], chamber.peak, chamber.peak_other);
    json["chambers"].push_back(one);
  }
  put_difference(json["peak_anywhere"], difference.peak_anywhere, difference.peak_anywhere_other);
  return json;
}

Json wrap_json(const Summary& summary) {
  Json json;
  json["closure"] = nullptr;
  if (const auto& closure = summary.closure)
    json["closure"] = {{"girth_at_anchor_mm", rounded(closure->girth_at_anchor / mm)},
                       {"closing_length_mm", rounded(closure->closing_length_used / mm)},
                       {"closing_length_needed_mm", rounded(closure->closing_length_needed / mm)},
                       {"gap_distal_mm", rounded(closure->gap_distal / mm)},
                       {"gap_proximal_mm", rounded(closure->gap_proximal / mm)}};
  json["quality"] = Json::array();
  for (const WrapQuality& quality : summary.quality)
    json["quality"].push_back({{"part", quality.part},
                               {"stretch_min", rounded(quality.stretch_min)},
                               {"stretch_max", rounded(quality.stretch_max)},
                               {"shear_max_deg", rounded(quality.shear_max_deg)}});
  return json;
}

Json inlets_json(const Summary& summary) {
  Json json = Json::array();
  for (const InflatedInlet& inlet : summary.inlets) {
    Json one = {{"inlet", inlet.inlet}, {"asked", inlet.asked}};
    put_pressure(one, "gauge", inlet.gauge);
    one["volume_mL"] = rounded(inlet.volume / mL);
    for (const InletRelief& relief : summary.relief)
      if (relief.inlet == inlet.inlet) put_setting(one, "highest_relief", relief.highest);
    json.push_back(one);
  }
  return json;
}

Json inputs_json(const Summary& summary) {
  Json json = Json::array();
  for (const InputFile& input : summary.inputs)
    json.push_back({{"role", input.role}, {"name", input.name}, {"sha256", input.sha256}});
  return json;
}

Json cautions_json(std::optional<BodyPart> part, bool calibrated) {
  const Cautions all = cautions(part, calibrated);
  return {{"standing", all.standing},
          {"never", all.never},
          {"every_time", all.every_time},
          {"of_part", all.of_part},
          {"not_for", all.not_for},
          {"stop_signs", all.stop_signs},
          {"ask", all.ask}};
}

}  // namespace

std::string summary_json(const Summary& summary) {
  Json json;
  json["wrapgauge-summary"] = 2;
  json["program_version"] = summary.program_version;
  json["inputs"] = inputs_json(summary);
  json["date"] = words_or_null(summary.date);
  json["plan"] = summary.plan;
  json["body"] = summary.body;
  json["layout"] = summary.layout;
  json["worn"] = summary.worn;
  json["place"] = place_json(summary);
  json["wearers"] = wearers_json(summary.wearers);
  json["verdict"] = english(verdict(summary));
  json["status"] = status_text(summary);
  json["above_limit"] = summary.worst >= Severity::kAboveLimit;
  json["limits"] = limits_json(summary);
  json["limit_point"] = summary.limit_point ? Json(*summary.limit_point) : Json(nullptr);
  json["findings"] = Json::array();
  for (const Finding& finding : summary.findings) json["findings"].push_back(finding_json(finding));
  json["hazards"] = Json::array();
  for (const Hazard& hazard : summary.hazards)
    json["hazards"].push_back({{"hazard", english(hazard.name)},
                               {"severity", severity_text(hazard.severity)},
                               {"sentence", english(hazard.sentence)},
                               {"control", english(hazard.control)}});
  json["model_factor"] = summary.model_factor;
  json["calibration"] = summary.calibration ? Json(calibrated_words(*summary.calibration)) : Json(nullptr);
  json["exposure"] = exposure_json(summary);
  json["inlets"] = inlets_json(summary);
  json["chambers"] = Json::array();
  for (const ChamberFigures& chamber : summary.figures.chambers)
    json["chambers"].push_back(chamber_json(chamber));
  json["whole"] = whole_json(summary.figures);
  json["seams"] = seams_json(summary.figures);
  json["comparisons"] = Json::array();
  for (const FiguresDifference& difference : summary.comparisons)
    json["comparisons"].push_back(comparison_json(difference));
  json["wrap"] = wrap_json(summary);
  json["audit"] = audit_json(summary.audit);
  json["mesh"] = mesh_json(summary);
  json["assumed"] = summary.assumed;
  json["cautions"] = cautions_json(summary.part, summary.calibration.has_value());
  // Names may hold any bytes; what is no UTF-8 is replaced rather than refused this late.
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace wrapgauge
