#include <algorithm>

#include "model/body/part_rules.hpp"
#include "model/study/latin_hypercube.hpp"
#include "model/study/spread.hpp"

namespace wrapgauge {
namespace {

std::vector<SpreadRun> runs_of(const SpreadJob& job, const std::vector<UncertainInput>& inputs,
                               int& nominals) {
  const Length preview = std::max(job.table.preview_edge, job.plan.mesh_edge);
  std::vector<SpreadRun> runs{{"nominal", job.inputs_hash, preview, {}}};
  if (job.plan.mesh_edge < preview)
    runs.push_back({"nominal, fine mesh", job.inputs_hash, job.plan.mesh_edge, {}});
  nominals = static_cast<int>(runs.size());
  std::vector<std::string> names;
  for (const UncertainInput& input : inputs) names.push_back(input.name);
  const Eigen::MatrixXd sample = latin_hypercube(names, job.table.runs, job.table.seed);
  for (Eigen::Index r = 0; r < sample.rows(); ++r) {
    SpreadRun run{"run " + std::to_string(r + 1), job.inputs_hash, preview, {}};
    for (std::size_t i = 0; i < inputs.size(); ++i)
      run.values.push_back(inputs[i].value(sample(r, static_cast<Eigen::Index>(i))));
    runs.push_back(std::move(run));
  }
  return runs;
}

std::vector<RunOrder> orders_of(const SpreadRuns& all) {
  const Length preview = all.runs.front().edge;
  std::vector<RunOrder> orders;
  for (const SpreadRun& run : all.runs)
    orders.push_back({run.name, run_identity(run, all.inputs), cost_of_edge(run.edge, preview)});
  return orders;
}

Result<SpreadRuns> wanted_runs(const SpreadJob& job) {
  auto inputs = inputs_of_plan(job.table, job.plan, job.resources);
  if (!inputs) return inputs.problem();
  SpreadRuns all;
  all.inputs = std::move(inputs).value();
  all.runs = runs_of(job, all.inputs, all.nominals);
  return all;
}

void take_answers(const RunAnswers& answers, SpreadRuns& all) {
  for (const auto& answer : answers) all.outcomes.push_back(answer ? outcome_from(*answer) : std::nullopt);
}

}  // namespace

int SpreadRuns::missing() const {
  return static_cast<int>(
      std::count_if(outcomes.begin(), outcomes.end(), [](const auto& outcome) { return !outcome; }));
}

Result<int> missing_spread_runs(const SpreadJob& job, const RunFolders& folders) {
  const auto all = wanted_runs(job);
  if (!all) return all.problem();
  const auto kept = kept_runs(orders_of(*all), folders);
  if (!kept) return kept.problem();
  return missing_runs(*kept);
}

Result<SpreadRuns> solve_spread(const SpreadJob& job, const RunFolders& folders, const RunPart& part,
                                Progress& progress) {
  auto wanted = wanted_runs(job);
  if (!wanted) return wanted.problem();
  SpreadRuns all = std::move(wanted).value();
  const auto body = body_of_plan(job.plan, job.body);
  if (!body) return body.problem();
  if (auto problem = part_missing(body->name, body->part)) return *problem;
  const auto answer = [&](std::size_t run, Progress& inner) -> Result<std::string> {
    const auto outcome = solve_run(all.runs[run], job.plan, *body, job.resources, all.inputs, inner);
    if (!outcome) return outcome.problem();
    return outcome_json(*outcome);
  };
  const auto answers = solve_runs(orders_of(all), folders, part, answer, progress);
  if (!answers) return answers.problem();
  take_answers(*answers, all);
  return all;
}

}  // namespace wrapgauge
