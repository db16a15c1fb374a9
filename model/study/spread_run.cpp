#include "model/study/spread_run.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

#include "model/core/version.hpp"
#include "model/study/limit_point_words.hpp"
#include "model/study/run_lines.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

bool all_finite(const RunFigures& figures) {
  for (const auto& chamber : figures.chambers)
    for (const double value : chamber)
      if (!std::isfinite(value)) return false;
  for (const double value : figures.whole)
    if (!std::isfinite(value)) return false;
  return true;
}

SpreadOutcome failed(std::string why) {
  return {std::move(why), {}};
}

// Why there are no figures; what tells nothing of the run ends the study instead.
Result<SpreadOutcome> unanswered_run(const Problem& problem) {
  if (is_no_answer(problem.kind)) return problem;
  return failed(problem.message);
}

bool numbers_from(const nlohmann::json& list, std::size_t count, std::vector<double>& out) {
  if (!list.is_array() || list.size() != count) return false;
  for (const auto& value : list) {
    if (!value.is_number()) return false;
    out.push_back(value.get<double>());
  }
  return true;
}

bool figures_from(const nlohmann::json& json, RunFigures& figures) {
  if (!json.contains("chambers") || !json["chambers"].is_array() || !json.contains("whole")) return false;
  for (const auto& row : json["chambers"]) {
    figures.chambers.emplace_back();
    if (!numbers_from(row, chamber_figure_names().size(), figures.chambers.back())) return false;
  }
  return numbers_from(json["whole"], whole_figure_names().size(), figures.whole);
}

}  // namespace

Result<SpreadOutcome> solve_run(const SpreadRun& run, const Plan& plan, const Body& body,
                                const Resources& resources, const std::vector<UncertainInput>& inputs,
                                Progress& progress) {
  std::vector<UncertainInput> drawn = inputs;
  drawn.resize(run.values.size());
  const auto varied = varied_plan(plan, body, resources, drawn, run.values);
  if (!varied) return unanswered_run(varied.problem());
  FlatMeshOptions mesh{.edge = run.edge, .seam_edge = run.edge};
  if (run.edge == plan.mesh_edge) mesh = mesh_of_plan(plan);
  const auto study = StudyCase::make(varied->plan, varied->body, varied->resources, mesh);
  if (!study) return unanswered_run(study.problem());
  const auto path = study->inflate_to(study->targets(), progress);
  if (!path) return unanswered_run(path.problem());
  if (path->limit_point) return failed(limit_point_words(*path->limit_point));
  SpreadOutcome outcome{std::nullopt, run_figures(study->read(*path))};
  if (!all_finite(outcome.figures)) return failed("A figure is not a finite number.");
  return outcome;
}

std::string run_identity(const SpreadRun& run, const std::vector<UncertainInput>& inputs) {
  Json json;
  json["study"] = "spread";
  json["program"] = std::string(program_version());
  json["inputs_hash"] = run.inputs_hash;
  json["run"] = run.name;
  json["edge_mm"] = run.edge / mm;
  json["inputs"] = Json::object();
  for (std::size_t i = 0; i < run.values.size(); ++i) json["inputs"][inputs[i].name] = run.values[i];
  return one_line(json);
}

std::string outcome_json(const SpreadOutcome& outcome) {
  Json json;
  json["failed"] = outcome.failed ? Json(*outcome.failed) : Json();
  json["chambers"] = outcome.figures.chambers;
  json["whole"] = outcome.figures.whole;
  return one_line(json);
}

std::optional<SpreadOutcome> outcome_from(const std::string& text) {
  const auto json = nlohmann::json::parse(text, nullptr, false);
  if (!json.is_object() || !json.contains("failed")) return std::nullopt;
  SpreadOutcome outcome;
  if (json["failed"].is_string()) {
    outcome.failed = json["failed"].get<std::string>();
    return outcome;
  }
  if (!figures_from(json, outcome.figures)) return std::nullopt;
  return outcome;
}

}  // namespace wrapgauge
