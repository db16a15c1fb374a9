#include "model/study/many_runs.hpp"

#include <tbb/task_arena.h>

#include <algorithm>
#include <atomic>
#include <charconv>
#include <chrono>
#include <cmath>
#include <fstream>
#include <mutex>
#include <numeric>
#include <unordered_map>

#include "model/core/both_at_once.hpp"
#include "model/core/in_parallel.hpp"
#include "model/core/time_text.hpp"
#include "model/study/run_lines.hpp"

namespace wrapgauge {
namespace {

using Clock = std::chrono::steady_clock;

// Runs are solved side by side: only their number and the time left are told. Whatever ends one of them
// stops the others.
class RunsProgress : public Progress {
 public:
  RunsProgress(Progress& outer, std::size_t wanted, double cost)
      : outer_(outer), wanted_(wanted), cost_(cost), begun_(Clock::now()) {}
  bool cancelled() const override { return stopped_ || outer_.cancelled(); }
  void stop() { stopped_ = true; }
  void done_one(double cost) {
    const std::lock_guard lock(mutex_);
    ++done_;
    cost_done_ += cost;
    const double spent = std::chrono::duration<double>(Clock::now() - begun_).count();
    std::string stage = "runs " + std::to_string(done_) + " of " + std::to_string(wanted_);
    if (done_ < wanted_)
      stage += ", about " + rough_time_text(spent * (cost_ - cost_done_) / cost_done_ * second) + " left";
    outer_.report(stage, cost_done_ / cost_);
  }

 private:
  Progress& outer_;
  std::size_t wanted_, done_ = 0;
  double cost_, cost_done_ = 0.0;
  Clock::time_point begun_;
  std::mutex mutex_;
  std::atomic<bool> stopped_ = false;
};

using RunPlaces = std::unordered_map<std::string, std::vector<std::size_t>>;

std::vector<std::filesystem::path> line_files(const std::filesystem::path& folder) {
  std::vector<std::filesystem::path> files;
  std::error_code none;
  for (const auto& entry : std::filesystem::directory_iterator(folder, none))
    if (entry.path().extension() == ".jsonl") files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  return files;
}

std::optional<Problem> take_lines(const std::filesystem::path& file, const RunPlaces& places,
                                  RunAnswers& answers) {
  std::ifstream in(file, std::ios::binary);
  if (!in) return bad_input("Cannot read the runs kept in " + file.string() + ".");
  for (std::string line; std::getline(in, line);) {
    const auto kept = read_run_line(line);
    const auto found = kept ? places.find(kept->identity) : places.end();
    if (found == places.end()) continue;
    for (const std::size_t run : found->second)
      if (!answers[run]) answers[run] = kept->answer;
  }
  if (in.bad()) return bad_input("Cannot read the runs kept in " + file.string() + ".");
  return std::nullopt;
}

// The costliest first, so that no thread is left with it alone at the end.
std::vector<std::size_t> runs_to_solve(const std::vector<RunOrder>& orders, const RunPart& part,
                                       const RunAnswers& answers) {
  std::vector<std::size_t> wanted;
  const auto parts = static_cast<std::size_t>(part.parts), mine = static_cast<std::size_t>(part.part - 1);
  for (std::size_t run = 0; run < orders.size(); ++run)
    if (!answers[run] && (orders[run].of_every_part || run % parts == mine)) wanted.push_back(run);
  std::stable_sort(wanted.begin(), wanted.end(),
                   [&](std::size_t a, std::size_t b) { return orders[a].cost > orders[b].cost; });
  return wanted;
}

// Solves runs and keeps their answers, from several threads at once.
class RunKeeper {
 public:
  RunKeeper(const std::vector<RunOrder>& orders, const AnswerRun& answer, RunLineFile& file,
            RunsProgress& progress, RunAnswers& answers)
      : orders_(orders), answer_(answer), file_(file), progress_(progress), answers_(answers) {}

  void solve(std::size_t run) {
    if (progress_.cancelled()) return;
    const LargeWork one_of_many;
    const auto answer = answer_(run, progress_);
    if (!answer) return end_with(answer.problem());
    const std::string line = run_line(orders_[run].name, orders_[run].identity, *answer);
    {
      const std::lock_guard lock(mutex_);
      if (auto kept = file_.append(line); !kept) return end_with(kept.problem());
    }
    answers_[run] = read_run_line(line)->answer;  // as others will read it
    progress_.done_one(orders_[run].cost);
  }
  // The first that is not only the stop of the others.
  const std::optional<Problem>& problem() const { return problem_; }

 private:
  void end_with(const Problem& problem) {
    const std::lock_guard lock(problem_mutex_);
    if (problem.kind != ProblemKind::kCancelled && !problem_) problem_ = problem;
    progress_.stop();
  }

  const std::vector<RunOrder>& orders_;
  const AnswerRun& answer_;
  RunLineFile& file_;
  RunsProgress& progress_;
  RunAnswers& answers_;
  std::mutex mutex_, problem_mutex_;
  std::optional<Problem> problem_;
};

std::filesystem::path part_file(const RunFolders& folders, const RunPart& part) {
  return folders.runs /
         ("part-" + std::to_string(part.part) + "-of-" + std::to_string(part.parts) + ".jsonl");
}

}  // namespace

double cost_of_edge(Length edge, Length other) {
  constexpr double kPower = 1.33;
  return std::pow(other / edge, 2.0 * kPower);
}

Result<RunPart> run_part_of(const std::string& text) {
  RunPart part;
  if (text.empty()) return part;
  const char* end = text.data() + text.size();
  const auto before = std::from_chars(text.data(), end, part.part);
  if (before.ec == std::errc() && before.ptr != end && *before.ptr == '/') {
    const auto after = std::from_chars(before.ptr + 1, end, part.parts);
    if (after.ec == std::errc() && after.ptr == end && part.part >= 1 && part.part <= part.parts) return part;
  }
  return bad_input("--part is '" + text + "': write it as 2/4, the second of four parts.");
}

int missing_runs(const RunAnswers& answers) {
  return static_cast<int>(std::count(answers.begin(), answers.end(), std::nullopt));
}

Result<RunAnswers> kept_runs(const std::vector<RunOrder>& orders, const RunFolders& folders) {
  RunPlaces places;
  for (std::size_t run = 0; run < orders.size(); ++run) places[orders[run].identity].push_back(run);
  RunAnswers answers(orders.size());
  std::vector<std::filesystem::path> all = folders.also_from;
  all.insert(all.begin(), folders.runs);
  for (const std::filesystem::path& folder : all)
    for (const std::filesystem::path& file : line_files(folder))
      if (auto problem = take_lines(file, places, answers)) return *problem;
  return answers;
}

Result<RunAnswers> solve_runs(const std::vector<RunOrder>& orders, const RunFolders& folders,
                              const RunPart& part, const AnswerRun& answer, Progress& outer) {
  if (part.parts < 1 || part.part < 1 || part.part > part.parts)
    return bad_input("part " + std::to_string(part.part) + " of " + std::to_string(part.parts) +
                     " does not exist: parts are counted from 1.");
  auto kept = kept_runs(orders, folders);
  if (!kept) return kept.problem();
  RunAnswers answers = std::move(kept).value();
  const std::vector<std::size_t> wanted = runs_to_solve(orders, part, answers);
  if (wanted.empty()) return answers;
  auto opened = RunLineFile::open(part_file(folders, part));
  if (!opened) return opened.problem();
  RunLineFile file = std::move(opened).value();
  const double cost = std::accumulate(wanted.begin(), wanted.end(), 0.0,
                                      [&](double sum, std::size_t run) { return sum + orders[run].cost; });
  RunsProgress progress(outer, wanted.size(), cost);
  RunKeeper keeper(orders, answer, file, progress, answers);
  each_in_parallel(
      wanted.size(),
      // A thread that waits inside one run must not start another on top of it.
      [&](std::size_t w) { tbb::this_task_arena::isolate([&] { keeper.solve(wanted[w]); }); },
      tbb::simple_partitioner());
  if (keeper.problem()) return *keeper.problem();
  // Other parts may have ended in the meantime: whichever of them looks last finds every run.
  if (!outer.cancelled()) return missing_runs(answers) > 0 ? kept_runs(orders, folders) : answers;
  const auto total = static_cast<int>(answers.size());
  return Problem{ProblemKind::kCancelled,
                 "Cancelled: " + std::to_string(total - missing_runs(answers)) + " of " +
                     std::to_string(total) + " runs are kept in " + folders.runs.string() +
                     "; start again to go on from there.",
                 {}};
}

}  // namespace wrapgauge
