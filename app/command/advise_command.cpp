#include <unistd.h>

#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/commands.hpp"
#include "app/command/mesh_edge_option.hpp"
#include "app/command/plan_job.hpp"
#include "app/command/terminal_progress.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/command/write_plan_option.hpp"
#include "app/job/study_inputs.hpp"
#include "model/study/advice_report.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kAdviseExamples =
    "Examples:\n"
    "  wrapgauge advise cuff.json\n"
    "  wrapgauge advise cuff.json --out cuff-advice --write cuff-advised.json\n"
    "  wrapgauge advise cuff.json --json | jq '.changes[] | select(.fate==\"advised\")'\n"
    "One change at a time: an inlet or all of them lower, the closure looser or\n"
    "tighter, the device moved or turned, a sheet thicker or softer, shorter times.\n"
    "What is advised was solved on the plan's own mesh, and makes nothing worse.\n"
    "Exit code 4: the plan is above its limits, whether a change was found or not.\n";

struct AdviseCommand {
  std::filesystem::path plan;
  std::optional<std::filesystem::path> folder, write;
  std::optional<double> edge_mm;
  bool json = false;
};

// Where runs are kept: in the folder for the results, or in one that is gone afterwards.
class AdviceRuns {
 public:
  explicit AdviceRuns(const std::optional<std::filesystem::path>& folder)
      : scratch_(!folder),
        runs_(folder ? *folder / "runs"
                     : std::filesystem::temp_directory_path() /
                           ("wrapgauge-advise-" + std::to_string(::getpid()))) {}
  ~AdviceRuns() {
    std::error_code none;
    if (scratch_) std::filesystem::remove_all(runs_, none);
  }
  AdviceRuns(const AdviceRuns&) = delete;
  AdviceRuns& operator=(const AdviceRuns&) = delete;
  const std::filesystem::path& folder() const { return runs_; }

 private:
  bool scratch_;
  std::filesystem::path runs_;
};

std::optional<Problem> write_advice_files(const AdviseCommand& command, const Advice& advice,
                                          const std::string& json, const std::string& page,
                                          std::optional<ResultFolder>& place, Streams streams) {
  if (place) {
    const ResultPart part{"advise", {{"advice.json", json}, {"advice.md", page}}};
    if (auto written = write_set(*place, {part}, streams); !written) return written.problem();
  }
  if (command.write && advice.advised())
    if (auto written = write_plan(*advice.advised(), *command.write); !written) return written.problem();
  return std::nullopt;
}

int say_advice(const AdviseCommand& command, const Advice& advice, const Job& job,
               std::optional<ResultFolder>& place, Streams streams) {
  const std::string file = command.plan.filename().string(),
                    json = advice_json(advice, job.plan.name, inputs_hash(job), file);
  if (auto problem = write_advice_files(command, advice, json, advice_markdown(advice, job.plan.name, file),
                                        place, streams))
    return say_problem(*problem, streams);
  if (command.write && !advice.advised())
    streams.err << "wrapgauge: " << command.write->filename().string()
                << " is not written: no change is advised.\n";
  if (command.json)
    streams.out << json;
  else
    for (const std::string& sentence : advice_words(advice, file)) streams.out << wrapped(sentence, 2);
  return advice.plan.within ? kExitDone : kExitAboveLimit;
}

int run_advise(const AdviseCommand& command, Streams streams) {
  if (auto problem = writes_over_plan(command.write, command.plan)) return say_problem(*problem, streams);
  const auto job = read_plan_job(command.plan, streams, PlanCalibration::kLeftOut);
  if (!job) return say_problem(job.problem(), streams);
  AdviceJob wanted{job->plan, job->body, job->resources, inputs_hash(*job)};
  if (command.edge_mm) wanted.plan.mesh_edge = *command.edge_mm * mm;
  if (auto problem = advice_refused(wanted)) return say_problem(*problem, streams);
  std::optional<ResultFolder> place;
  if (command.folder) {
    auto opened = ResultFolder::open(*command.folder, origin_of(*job));
    if (!opened) return say_problem(opened.problem(), streams);
    place = std::move(opened).value();
  }
  const AdviceRuns runs(command.folder);
  if (auto made = make_folder(runs.folder()); !made) return say_problem(made.problem(), streams);
  std::optional<Result<Advice>> advice;
  {
    TerminalProgress progress;
    advice = find_advice(wanted, {runs.folder(), {}}, progress);
  }
  if (!*advice) return say_problem(advice->problem(), streams);
  return say_advice(command, **advice, *job, place, streams);
}

}  // namespace

void add_advise(CLI::App& app, Action& action) {
  auto wanted = std::make_shared<AdviseCommand>();
  CLI::App* command = app.add_subcommand("advise", "Find single changes that bring a plan within its limits");
  command->add_option("plan", wanted->plan, "The plan, a JSON file")->required()->type_name("PLAN");
  command
      ->add_option("--out", wanted->folder,
                   "Folder for advice.json, advice.md and the runs; made if it is missing")
      ->type_name("DIR");
  command->add_option("--write", wanted->write, "Write the plan with the first advised change to this file")
      ->type_name("PLAN");
  command->add_flag("--json", wanted->json, "Print advice.json instead of sentences");
  add_mesh_edge_option(*command, wanted->edge_mm);
  command->footer(kAdviseExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_advise(*wanted, streams); }; });
}

}  // namespace wrapgauge
