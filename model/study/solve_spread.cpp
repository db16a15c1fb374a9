#include <tbb/task_arena.h>

#include <algorithm>
#include <atomic>
#include <mutex>

#include "model/body/part_rules.hpp"
#include "model/core/file.hpp"
#include "model/core/in_parallel.hpp"
#include "model/study/latin_hypercube.hpp"
#include "model/study/spread.hpp"

namespace wrapgauge {
namespace {

// Runs are solved side by side: only their number is told, and one that fails to be written stops the others.
class RunsProgress : public Progress {
 public:
  RunsProgress(Progress& outer, std::size_t wanted) : outer_(outer), wanted_(wanted) {}
  bool cancelled() const override { return stopped_ || outer_.cancelled(); }
  void stop() { stopped_ = true; }
  void done_one() {
    const std::lock_guard lock(mutex_);
    ++done_;
    outer_.report("runs " + std::to_string(done_) + " of " + std::to_string(wanted_),
                  static_cast<double>(done_) / static_cast<double>(wanted_));
  }

 private:
  Progress& outer_;
  std::size_t wanted_, done_ = 0;
  std::mutex mutex_;
  std::atomic<bool> stopped_ = false;
};

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

std::optional<SpreadOutcome> find_run(const SpreadFolders& folders, const SpreadRun& run,
                                      const std::vector<UncertainInput>& inputs) {
  const std::string name = run_file_name(run, inputs);
  if (auto outcome = read_run(folders.runs / name, run, inputs)) return outcome;
  for (const std::filesystem::path& folder : folders.also_from)
    if (auto outcome = read_run(folder / name, run, inputs)) return outcome;
  return std::nullopt;
}

std::optional<Problem> solve_and_keep(const SpreadJob& job, const Body& body, const SpreadFolders& folders,
                                      const SpreadRun& run, SpreadRuns& all, std::size_t index,
                                      RunsProgress& progress) {
  const auto outcome = solve_run(run, job.plan, body, job.resources, all.inputs, progress);
  if (!outcome) return outcome.problem();
  const std::filesystem::path file = folders.runs / run_file_name(run, all.inputs);
  if (auto written = write_file_atomically(file, run_json(run, all.inputs, *outcome)); !written)
    return written.problem();
  all.outcomes[index] = read_run(file, run, all.inputs);  // as others will read it
  progress.done_one();
  return std::nullopt;
}

std::optional<Problem> solve_missing(const SpreadJob& job, const SpreadFolders& folders,
                                     const SpreadPart& part, SpreadRuns& all, Progress& outer) {
  const auto body = body_of_plan(job.plan, job.body);
  if (!body) return body.problem();
  if (auto problem = part_missing(body->name, body->part)) return problem;
  std::vector<std::size_t> missing;
  for (std::size_t i = 0; i < all.runs.size(); ++i)
    if (!all.outcomes[i] &&
        i % static_cast<std::size_t>(part.parts) == static_cast<std::size_t>(part.part - 1))
      missing.push_back(i);
  // The finest mesh takes longest, so it goes first.
  std::stable_sort(missing.begin(), missing.end(),
                   [&](std::size_t a, std::size_t b) { return all.runs[a].edge < all.runs[b].edge; });
  RunsProgress progress(outer, missing.size());
  std::vector<std::optional<Problem>> problems(missing.size());
  each_in_parallel(
      missing.size(),
      [&](std::size_t m) {
        if (progress.cancelled()) return;
        // A thread that waits inside one run must not start another on top of it.
        tbb::this_task_arena::isolate([&] {
          problems[m] = solve_and_keep(job, *body, folders, all.runs[missing[m]], all, missing[m], progress);
        });
        if (problems[m]) progress.stop();
      },
      tbb::simple_partitioner());
  for (const auto& problem : problems)
    if (problem && problem->kind != ProblemKind::kCancelled) return problem;
  if (!outer.cancelled()) return std::nullopt;
  const auto total = static_cast<int>(all.runs.size());
  return Problem{ProblemKind::kCancelled,
                 "Cancelled: " + std::to_string(total - all.missing()) + " of " + std::to_string(total) +
                     " runs are kept in " + folders.runs.string() + "; start again to go on from there.",
                 {}};
}

}  // namespace

int SpreadRuns::missing() const {
  return static_cast<int>(
      std::count_if(outcomes.begin(), outcomes.end(), [](const auto& outcome) { return !outcome; }));
}

Result<SpreadRuns> solve_spread(const SpreadJob& job, const SpreadFolders& folders, const SpreadPart& part,
                                Progress& progress) {
  if (part.parts < 1 || part.part < 1 || part.part > part.parts)
    return bad_input("part " + std::to_string(part.part) + " of " + std::to_string(part.parts) +
                     " does not exist: parts are counted from 1.");
  auto inputs = inputs_of_plan(job.table, job.plan, job.resources);
  if (!inputs) return inputs.problem();
  SpreadRuns all;
  all.inputs = std::move(inputs).value();
  all.runs = runs_of(job, all.inputs, all.nominals);
  for (const SpreadRun& run : all.runs) all.outcomes.push_back(find_run(folders, run, all.inputs));
  if (auto problem = solve_missing(job, folders, part, all, progress)) return *problem;
  return all;
}

}  // namespace wrapgauge
