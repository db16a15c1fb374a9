#include "model/study/variant_run.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <set>

#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"
#include "model/core/rounded_down.hpp"
#include "model/core/version.hpp"
#include "model/plan/plan_to_json.hpp"
#include "model/study/ceiling_report.hpp"
#include "model/study/ceiling_settings.hpp"
#include "model/study/estimate_reading.hpp"
#include "model/study/even_mesh.hpp"
#include "model/study/limit_point_words.hpp"
#include "model/study/random_stream.hpp"
#include "model/study/run_lines.hpp"

namespace wrapgauge {
namespace {

using OrderedJson = nlohmann::ordered_json;

// To a millionth of the unit: finer than any figure here is known.
double short_number(double value) {
  return std::round(1e6 * value) / 1e6;
}

int whole_number(double value) {
  return static_cast<int>(std::lround(std::clamp(value, -1e9, 1e9)));
}

// What an estimate of it returns to the shell.
int exit_code_of_severity(Severity worst) {
  if (worst == Severity::kStop) return 5;
  return worst == Severity::kAboveLimit ? 4 : 0;
}

// Why there are no figures; what tells nothing of the variant ends the study instead.
Result<VariantAnswer> unanswered_variant(const Problem& problem) {
  if (is_no_answer(problem.kind)) return problem;
  VariantAnswer answer;
  answer.failed = problem.message;
  answer.exit_code = problem.kind == ProblemKind::kNotConverged ? 3 : 2;
  return answer;
}

bool is_finite(const VariantAnswer& answer) {
  const auto finite = [](double value) { return std::isfinite(value); };
  for (const auto& chamber : answer.figures.chambers)
    if (!std::all_of(chamber.begin(), chamber.end(), finite)) return false;
  for (const ChamberCurve& curve : answer.curves)
    for (const CurvePoint& p : curve.points)
      for (const double value : {p.gauge_kpa, p.volume_ml, p.mean_kpa, p.peak_kpa, p.bulge_mm, p.stretch_max})
        if (!std::isfinite(value)) return false;
  return std::all_of(answer.figures.whole.begin(), answer.figures.whole.end(), finite) &&
         std::isfinite(answer.share);
}

void add_points(const StudyCase& study, const LoadPath& path, const EquilibriumState& state,
                const std::vector<ChamberFigures>& chambers, std::vector<ChamberCurve>& curves) {
  curves.resize(chambers.size());
  for (std::size_t c = 0; c < curves.size(); ++c) {
    const ChamberFigures& chamber = chambers[c];
    curves[c].chamber = chamber.chamber;
    const Length bulge = bulge_height(study.setup(), path.sheet, state, ChamberId(static_cast<int>(c)));
    curves[c].points.push_back({chamber.gauge / kPa, chamber.volume / mL, chamber.mean / kPa,
                                chamber.peak / kPa, bulge / mm, chamber.stretch_max});
  }
}

VariantMap map_of(const StudyCase& study, const LoadPath& path, const MappedContact& last) {
  VariantMap map;
  for (const double pa : last.map.on_layout_pa) map.contact_pa.push_back(whole_number(pa));
  for (const double share : study.share_on_layout(path, last))
    map.share_permille.push_back(whole_number(1e3 * share));
  std::set<int> limits;
  for (const double pa : study.limit_on_layout(path, last))
    if (std::isfinite(pa) && pa > 0.0) limits.insert(whole_number(pa));
  map.limits_pa.assign(limits.begin(), limits.end());
  return map;
}

void take_reading(const StateReading& reading, VariantAnswer& answer) {
  answer.exit_code = exit_code_of_severity(reading.judgement.worst());
  answer.share = reading.nearest.share;
  answer.where = reading.nearest.where;
  answer.sentence = reading.nearest.sentence;
  answer.figures = run_figures(reading);
  if (const Hazard* valve = valve_above_limit(reading)) {
    answer.valve = english(valve->name);
    answer.sentence = english(valve->sentence);
  }
}

std::vector<std::string> not_the_shipped_tables(const Resources& resources) {
  std::vector<std::string> words = english(resources.differ);
  if (const auto override = english(resources.limits.override_words)) words.insert(words.begin(), *override);
  return words;
}

std::string short_ceiling(const std::vector<CeilingInlet>& inlets) {
  std::string words;
  for (const CeilingInlet& inlet : inlets)
    words += (words.empty() ? "'" : "; '") + inlet.inlet + "' " + setting_text(inlet.gauge) + ", " +
             fixed_text(rounded_down(inlet.volume / mL, 0.1), 1) + " mL";
  return words;
}

Result<VariantCeiling> ceiling_of(const Plan& plan, const Body& body, const Resources& resources,
                                  const InflatedPlan& inflated, Progress& progress) {
  const auto ready = body_of_plan(plan, body);
  if (!ready) return ready.problem();
  CeilingOptions options;
  options.alone = false;
  const auto found = find_ceiling(plan, *ready, resources, inflated, options, progress);
  if (!found && is_no_answer(found.problem().kind)) return found.problem();
  if (!found) return VariantCeiling{true, found.problem().message, {}};
  const std::vector<CeilingInlet>& inlets = found->together.inlets;
  if (!inlets.empty()) return VariantCeiling{false, short_ceiling(inlets), inlets};
  const auto brief = ceiling_brief(*found);
  return VariantCeiling{true, brief.empty() ? "None." : brief.front(), {}};
}

Result<StudyCase> worn_case(const Plan& plan, const Body& body, const Resources& resources,
                            const LeftByRuns& left) {
  if (left.worn)
    if (auto alike = left.worn->as_worn(plan)) return std::move(*alike);
  const auto ready = body_of_plan(plan, body);
  if (!ready) return ready.problem();
  DistanceBlocks own;
  KnownBefore known;
  known.distances = left.distances ? left.distances : &own;
  auto made = StudyCase::make(plan, *ready, resources, mesh_of_plan(plan), known);
  if (made && left.worn) left.worn->keep(plan, *made);
  return made;
}

OrderedJson ceiling_to_json(const VariantCeiling& ceiling) {
  return {{"none", ceiling.none}, {"words", ceiling.words}, {"inlets", settings_json(ceiling.inlets)}};
}

OrderedJson curve_to_json(const ChamberCurve& curve) {
  OrderedJson json{{"chamber", curve.chamber}, {"points", OrderedJson::array()}};
  for (const CurvePoint& p : curve.points)
    json["points"].push_back({short_number(p.gauge_kpa), short_number(p.volume_ml), short_number(p.mean_kpa),
                              short_number(p.peak_kpa), short_number(p.bulge_mm),
                              short_number(p.stretch_max)});
  return json;
}

ChamberCurve curve_from(const nlohmann::json& json) {
  ChamberCurve curve{json.at("chamber").get<std::string>(), {}};
  for (const auto& row : json.at("points")) {
    const auto n = row.get<std::array<double, 6>>();
    curve.points.push_back({n[0], n[1], n[2], n[3], n[4], n[5]});
  }
  return curve;
}

VariantCeiling ceiling_from(const nlohmann::json& json) {
  return {json.at("none").get<bool>(), json.at("words").get<std::string>(), settings_from(json.at("inlets"))};
}

VariantAnswer answer_from(const nlohmann::json& json) {
  VariantAnswer answer;
  answer.exit_code = json.at("exit_code").get<int>();
  if (json.contains("failed")) {
    answer.failed = json["failed"].get<std::string>();
    return answer;
  }
  if (json.contains("held")) answer.held = json["held"].get<std::string>();
  answer.share = json.at("share").get<double>();
  answer.where = json.at("where").get<std::string>();
  answer.sentence = json.at("sentence").get<std::string>();
  answer.valve = json.at("valve").get<std::string>();
  answer.model_factor = json.at("model_factor").get<double>();
  answer.limits_words = json.at("limits_words").get<std::vector<std::string>>();
  answer.figures.chambers = json.at("chambers").get<std::vector<std::vector<double>>>();
  answer.figures.whole = json.at("whole").get<std::vector<double>>();
  for (const auto& curve : json.at("curves")) answer.curves.push_back(curve_from(curve));
  answer.map.contact_pa = json.at("contact_Pa").get<std::vector<int>>();
  answer.map.share_permille = json.at("share_permille").get<std::vector<int>>();
  answer.map.limits_pa = json.at("limits_Pa").get<std::vector<int>>();
  if (json.contains("ceiling")) answer.ceiling = ceiling_from(json["ceiling"]);
  return answer;
}

bool has_all_figures(const VariantAnswer& answer) {
  if (answer.failed) return true;
  const std::size_t chambers = answer.curves.size();
  return answer.figures.whole.size() == whole_figure_names().size() &&
         answer.figures.chambers.size() == chambers &&
         std::all_of(answer.figures.chambers.begin(), answer.figures.chambers.end(),
                     [](const auto& row) { return row.size() == chamber_figure_names().size(); }) &&
         answer.map.contact_pa.size() == answer.map.share_permille.size();
}

}  // namespace

Plan meshed(Plan plan, const VariantMesh& mesh) {
  return mesh.edge ? on_even_mesh(std::move(plan), *mesh.edge) : plan;
}

std::string mesh_words(const VariantMesh& mesh) {
  return mesh.edge ? "mesh edge " + number_text(*mesh.edge / mm, 4) + " mm" : "the mesh of each plan";
}

Length bulge_height(const InflationSetup& setup, const SheetMesh& sheet, const EquilibriumState& state,
                    ChamberId chamber) {
  double greatest_m = 0.0;
  for (Eigen::Index t = 0; t < setup.flat.triangles.rows(); ++t) {
    const FlatRegion& region = setup.flat.regions[static_cast<std::size_t>(t)];
    if (region.kind != RegionKind::kChamber || region.part != static_cast<int>(chamber)) continue;
    for (int k = 0; k < 3; ++k) {
      const auto v = static_cast<std::size_t>(setup.flat.triangles(t, k));
      const auto apart =
          state.positions_m.row(sheet.outer_node[v]) - state.positions_m.row(sheet.skin_node[v]);
      greatest_m = std::max(greatest_m, apart.norm());
    }
  }
  return Length(greatest_m);
}

Result<VariantAnswer> solve_variant(const Plan& meshed_plan, const Body& body, const Resources& resources,
                                    bool with_ceiling, Progress& progress, const LeftByRuns& left) {
  const auto study = worn_case(meshed_plan, body, resources, left);
  if (!study) return unanswered_variant(study.problem());
  const auto path = study->inflate_to(study->targets(), progress);
  if (!path) return unanswered_variant(path.problem());
  const auto reading = read_as_estimate(*study, *path, progress);
  if (!reading) return unanswered_variant(reading.problem());

  VariantAnswer answer;
  if (path->limit_point) answer.held = limit_point_words(*path->limit_point);
  answer.model_factor = resources.limits.model_factor;
  answer.limits_words = not_the_shipped_tables(resources);
  take_reading(*reading, answer);
  for (std::size_t s = 0; s + 1 < path->states.size(); ++s)
    add_points(*study, *path, path->states[s], study->brief_figures(*path, path->states[s]), answer.curves);
  add_points(*study, *path, path->states.back(), reading->figures.chambers, answer.curves);
  answer.map = map_of(*study, *path, {reading->map, reading->figures});
  if (!is_finite(answer))
    return unanswered_variant({ProblemKind::kNotConverged, "A figure is not a finite number.", {}});
  if (!with_ceiling) return answer;
  auto ceiling = ceiling_of(meshed_plan, body, resources, {*study, *path}, progress);
  if (!ceiling) return ceiling.problem();
  answer.ceiling = std::move(ceiling).value();
  return answer;
}

std::string variant_identity(const Variants& variants, std::size_t variant, const Plan& plan,
                             const std::string& inputs_hash, bool with_ceiling) {
  OrderedJson json{{"study", "vary"},
                   {"program", std::string(program_version())},
                   {"inputs_hash", inputs_hash},
                   {"plan", hash_text(plan_to_json(plan).dump())},
                   {"ceiling", with_ceiling},
                   {"set", OrderedJson::object()}};
  const auto values = variants.values(variant);
  for (std::size_t c = 0; c < values.size(); ++c)
    json["set"][variants.changes()[c].path] = OrderedJson::parse(values[c]);
  return one_line(json);
}

std::string variant_json(const VariantAnswer& answer) {
  OrderedJson json{{"exit_code", answer.exit_code}};
  if (answer.failed) {
    json["failed"] = *answer.failed;
    return one_line(json);
  }
  if (answer.held) json["held"] = *answer.held;
  json["share"] = short_number(answer.share);
  json["where"] = answer.where;
  json["sentence"] = answer.sentence;
  json["valve"] = answer.valve;
  json["model_factor"] = answer.model_factor;
  json["limits_words"] = answer.limits_words;
  json["chambers"] = answer.figures.chambers;
  json["whole"] = answer.figures.whole;
  json["curves"] = OrderedJson::array();
  for (const ChamberCurve& curve : answer.curves) json["curves"].push_back(curve_to_json(curve));
  json["contact_Pa"] = answer.map.contact_pa;
  json["share_permille"] = answer.map.share_permille;
  json["limits_Pa"] = answer.map.limits_pa;
  if (answer.ceiling) json["ceiling"] = ceiling_to_json(*answer.ceiling);
  return one_line(json);
}

std::optional<VariantAnswer> variant_from(const std::string& text) {
  const auto json = nlohmann::json::parse(text, nullptr, false);
  if (!json.is_object()) return std::nullopt;
  try {
    VariantAnswer answer = answer_from(json);
    if (has_all_figures(answer)) return answer;
  } catch (const nlohmann::json::exception&) {  // a key is missing, or holds something else
  }
  return std::nullopt;
}

}  // namespace wrapgauge
