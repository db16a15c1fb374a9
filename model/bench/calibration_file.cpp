#include "model/bench/calibration_file.hpp"

#include <algorithm>

#include "model/bench/readings_file.hpp"
#include "model/core/file.hpp"
#include "model/core/json_object.hpp"
#include "model/core/version.hpp"
#include "model/pipeline/prepare.hpp"
#include "model/study/random_stream.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

Json parameters_json(const BenchFit& fit) {
  Json list = Json::array();
  for (const FittedParameter& one : fit.parameters)
    list.push_back({{"parameter", parameter_key(one.which)},
                    {"unit", is_factor(one.which) ? "" : "mm"},
                    {"told", one.told},
                    {"value", one.value},
                    {"low_95", one.low},
                    {"high_95", one.high},
                    {"drawn_low_95", one.drawn_low},
                    {"drawn_high_95", one.drawn_high}});
  return list;
}

Json readings_json(const BenchResult& result) {
  Json list = Json::array();
  for (const FittedReading& one : result.fit.readings) {
    const Reading& row = result.readings.rows[one.row];
    list.push_back({{"id", row.id},
                    {"kind", kind_name(row.kind)},
                    {"read_si", one.read},
                    {"predicted_si", one.nominal},
                    {"fitted_si", one.fitted},
                    {"standard_errors_off", one.standard},
                    {"outlier", one.outlier}});
  }
  return list;
}

Json factor_json(const ModelFactor& factor) {
  return {{"factor", factor.factor},         {"from_readings", factor.from_readings},
          {"contact", factor.contact},       {"chambers", factor.chambers},
          {"levels", factor.levels},         {"middle_ratio", factor.middle},
          {"tolerance_bound", factor.bound}, {"highest_ratio", factor.highest},
          {"why", english(factor.why)}};
}

// The part of the file that a plan needs; the rest is for people.
Calibration calibration_from(JsonObject& object) {
  Calibration out;
  out.readings = object.whole_number_or("readings", 0, 1, kMostReadings);
  out.kinds = object.text("kinds");
  out.date = object.text_or("date", "");
  out.remark = object.text_or("remark", "");
  out.factors.skin_law = object.number("skin_law", {kLeastFactor, kMostFactor, ""});
  out.factors.outer_law = object.number("outer_law", {kLeastFactor, kMostFactor, ""});
  out.factors.skin_thicker = object.number("skin_thicker_mm", {-2.0, 2.0, "mm"}) * mm;
  out.factors.outer_thicker = object.number("outer_thicker_mm", {-2.0, 2.0, "mm"}) * mm;
  out.factors.tissue = object.number("tissue", {kLeastFactor, kMostFactor, ""});
  out.model_factor = object.number("model_factor", {kLeastModelFactor, 100.0, ""});
  out.model_factor_why = object.text("model_factor_why");
  if (const auto holds = object.optional_number("seam_holds_n_per_mm", {0.0, 1e4, "N/mm"}))
    out.seams = SeamHold{*holds * N_per_mm, object.whole_number_or("seam_readings", 1, 1, kMostReadings)};
  if (const auto part = object.optional_text("part")) out.part = body_part_from_name(*part);
  if (const auto posture = object.optional_text("posture"))
    out.posture = *posture == "tense" ? Posture::kTense : Posture::kRelaxed;
  out.layout_hash = object.text("layout_hash");
  out.materials_hash = object.text("materials_hash");
  out.readings_hash = object.text("readings_hash");
  out.readings_file = object.text("readings_file");
  object.value("report");
  return out;
}

// What has changed since; none: nothing.
std::optional<Problem> staleness(const std::filesystem::path& file, const Calibration& calibration,
                                 const Plan& plan, const Body& body, const Resources& resources) {
  const std::string name = file.filename().string();
  if (calibration.layout_hash != layout_hash(plan.layout))
    return bad_input(
        Phrase::worded("%1 is stale: the layout has changed since; fit again (step Bench, or wrapgauge bench "
                       "fit), or take it out of the plan.",
                       {name_of(name)}));
  const auto materials = materials_hash(plan, body, resources);
  if (!materials) return materials.problem();
  if (calibration.materials_hash != *materials)
    return bad_input(
        Phrase::worded("%1 is stale: a silicone's or the tissue's row has changed since; fit again (step "
                       "Bench, or wrapgauge bench fit), or take it out of the plan.",
                       {name_of(name)}));
  const auto bytes = read_file(file.parent_path() / calibration.readings_file);
  if (!bytes)
    return bad_input(
        Phrase::worded("%1 is stale: its readings, '%2', cannot be read; fit again (step Bench, or wrapgauge "
                       "bench fit), or take it out of the plan.",
                       {name_of(name), name_of(calibration.readings_file)}));
  if (calibration.readings_hash != hash_text(*bytes))
    return bad_input(
        Phrase::worded("%1 is stale: its readings have changed since; fit again (step Bench, or wrapgauge "
                       "bench fit), or take it out of the plan.",
                       {name_of(name)}));
  return std::nullopt;
}

}  // namespace

std::string calibration_json(const BenchResult& result) {
  const Calibration& of = result.calibration;
  Json json{{"wrapgauge-calibration", 1}, {"program", std::string(program_version())}};
  json["layout_hash"] = of.layout_hash;
  json["materials_hash"] = of.materials_hash;
  json["readings_hash"] = of.readings_hash;
  json["readings_file"] = of.readings_file;
  json["readings"] = of.readings;
  json["kinds"] = of.kinds;
  if (!of.date.empty()) json["date"] = of.date;
  if (!of.remark.empty()) json["remark"] = of.remark;
  if (of.part) json["part"] = body_part_name(*of.part);
  if (of.posture) json["posture"] = posture_name(*of.posture);
  json["skin_law"] = of.factors.skin_law;
  json["outer_law"] = of.factors.outer_law;
  json["skin_thicker_mm"] = of.factors.skin_thicker / mm;
  json["outer_thicker_mm"] = of.factors.outer_thicker / mm;
  json["tissue"] = of.factors.tissue;
  json["model_factor"] = of.model_factor;
  json["model_factor_why"] = of.model_factor_why;
  if (of.seams) {
    json["seam_holds_n_per_mm"] = of.seams->holds / N_per_mm;
    json["seam_readings"] = of.seams->readings;
  }
  json["report"] = {{"parameters", parameters_json(result.fit)},
                    {"readings", readings_json(result)},
                    {"misfit", result.fit.misfit},
                    {"bands_widened", result.fit.widened},
                    {"cannot_tell", english(result.fit.cannot_tell)},
                    {"model_factor", factor_json(result.model_factor)},
                    {"mesh_edge_mm", result.mesh_edge / mm},
                    {"derivatives_edge_mm", result.preview_edge / mm}};
  return json.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

void keep_to_part(const Plan& plan, std::optional<BodyPart> part, Calibration& calibration) {
  const bool same_part = calibration.part == part;
  const bool same_posture = calibration.posture == plan.posture;
  if (!calibration.part || (same_part && same_posture)) return;
  calibration.factors.tissue = 1.0;
  calibration.model_factor = std::max(calibration.model_factor, kUncalibratedFactor);
  calibration.model_factor_why =
      std::string("The contact readings do not count: they were made on another ") +
      (same_part ? "posture" : "part of a body") + " than the plan's.";
}

Result<Calibration> read_calibration(const std::filesystem::path& file, const Plan& plan, const Body& body,
                                     const Resources& resources) {
  const auto parsed = read_json(file);
  if (!parsed) return parsed.problem();
  JsonObject object(*parsed, file.filename().string());
  object.format_one("wrapgauge-calibration");
  const std::string program = object.text("program");
  Calibration calibration = calibration_from(object);
  if (auto problem = object.finish()) return *problem;
  if (program != program_version())
    return bad_input(
        Phrase::worded("%1 is stale: another version of the program made it; fit again (step Bench, or "
                       "wrapgauge bench fit), or take it out of the plan.",
                       {name_of(file.filename().string())}));
  if (auto problem = staleness(file, calibration, plan, body, resources)) return *problem;
  const auto own = body_of_plan(plan, body);
  if (!own) return own.problem();
  keep_to_part(plan, own->part, calibration);
  return calibration;
}

}  // namespace wrapgauge
