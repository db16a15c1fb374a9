#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/commands.hpp"
#include "app/command/mesh_edge_option.hpp"
#include "app/command/plan_job.hpp"
#include "app/command/run_folder_options.hpp"
#include "app/command/terminal_progress.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/job/resource_folder.hpp"
#include "app/job/study_inputs.hpp"
#include "model/pipeline/prepare.hpp"
#include "model/study/even_mesh.hpp"
#include "model/study/runs_forecast.hpp"
#include "model/study/spread_report.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kSpreadExamples =
    "Examples:\n"
    "  wrapgauge spread cuff.json --out cuff-spread\n"
    "  wrapgauge spread cuff.json --out here --part 2/4     one of four machines\n"
    "  wrapgauge spread cuff.json --out all --merge here --merge there\n"
    "Stopped and started again, it goes on from the runs kept in DIR/runs. Writes\n"
    "spread.json and spread.md once every run is there; the same bytes whatever\n"
    "the parts, their order and the number of cores.\n";

struct SpreadCommand {
  std::filesystem::path plan;
  RunFolderOptions runs_in;
  std::optional<std::filesystem::path> ranges;
  std::optional<double> edge_mm, preview_mm;
  std::optional<int> runs, seed;
  bool json = false;
};

Result<SpreadTable> table_for(const SpreadCommand& command) {
  auto file = command.ranges ? Result<std::filesystem::path>(*command.ranges) : resource_folder();
  if (!file) return file.problem();
  auto read = read_spread_table(command.ranges ? *file : *file / "spread.json");
  if (!read) return read.problem();
  SpreadTable table = std::move(read).value();
  if (command.runs) table.runs = *command.runs;
  if (command.seed) table.seed = static_cast<std::uint64_t>(*command.seed);
  if (command.preview_mm) table.preview_edge = *command.preview_mm * mm;
  return table;
}

int write_spread(const Spread& spread, const std::optional<Calibration>& calibration,
                 const SpreadCommand& command, ResultFolder& place, Streams streams) {
  const std::string json = spread_json(spread);
  const ResultPart part{"spread", {{"spread.json", json}, {"spread.md", spread_markdown(spread)}}};
  if (auto written = write_set(place, {part}, streams); !written)
    return say_problem(written.problem(), streams);
  if (command.json) {
    streams.out << json;
  } else {
    for (const std::string& sentence : spread_words(spread)) streams.out << wrapped(sentence, 2);
    streams.out << wrapped(model_words(calibration) + "; not a medical device. Written to " +
                           command.runs_in.folder.string());
  }
  return spread.whole.back().high > 1.0 ? kExitAboveLimit : kExitDone;
}

// What lies before the first run, said on standard error. Problems: those of the plan and of the kept runs.
std::optional<Problem> say_forecast(const SpreadJob& job, const RunFolders& folders, const RunPart& part,
                                    Streams streams) {
  const auto missing = missing_spread_runs(job, folders);
  if (!missing) return missing.problem();
  const Plan first = no_finer_than(job.plan, job.table.preview_edge);
  const auto prepared = prepare(first, job.body, job.resources, mesh_of_plan(first));
  if (!prepared) return prepared.problem();
  const auto runs = static_cast<std::size_t>(*missing / part.parts);
  if (runs > 0)
    streams.err << wrapped(forecast_words(forecast_runs(runs, false, first, *prepared), "runs"), 2);
  return std::nullopt;
}

int run_spread(const SpreadCommand& command, Streams streams) {
  const auto part = run_part_of(command.runs_in.part);
  if (!part) return say_problem(part.problem(), streams);
  auto read = read_plan_job(command.plan, streams);
  if (!read) return say_problem(read.problem(), streams);
  Job job = std::move(read).value();
  if (command.edge_mm) job.plan.mesh_edge = *command.edge_mm * mm;
  const auto table = table_for(command);
  if (!table) return say_problem(table.problem(), streams);
  const SpreadJob wanted{job.plan, job.body, job.resources, *table, inputs_hash(job)};
  const RunFolders folders = run_folders(command.runs_in);
  if (const auto ready = prepare(job.plan, job.body, job.resources, mesh_of_plan(job.plan)); !ready)
    return say_problem(ready.problem(), streams);
  if (const auto problem = say_forecast(wanted, folders, *part, streams))
    return say_problem(*problem, streams);
  auto opened = ResultFolder::open(command.runs_in.folder, origin_of(job));
  if (!opened) return say_problem(opened.problem(), streams);
  ResultFolder place = std::move(opened).value();
  if (auto made = make_folder(folders.runs); !made) return say_problem(made.problem(), streams);
  std::optional<Result<SpreadRuns>> runs;
  {
    TerminalProgress progress;
    runs = solve_spread(wanted, folders, *part, progress);
  }
  if (!*runs) return say_problem(runs->problem(), streams);
  if (const int missing = (*runs)->missing(); missing > 0)
    return say_part_done("spread", missing, (*runs)->runs.size(), command.runs_in, streams);
  const auto spread = spread_of(wanted, **runs);
  if (!spread) return say_problem(spread.problem(), streams);
  return write_spread(*spread, job.resources.limits.calibration, command, place, streams);
}

void add_options(CLI::App& command, SpreadCommand& wanted) {
  command.add_option("plan", wanted.plan, "The plan, a JSON file")->required()->type_name("PLAN");
  add_run_folder_options(command, wanted.runs_in);
  command.add_option("--ranges", wanted.ranges, "Ranges of the inputs instead of the program's spread.json")
      ->type_name("FILE");
  command.add_option("--runs", wanted.runs, "Runs of the sample, 8 or more")->check(CLI::Range(8, 100000));
  command.add_option("--seed", wanted.seed, "Seed of the sample")->check(CLI::Range(0, 1000000000));
  command
      .add_option("--preview-mm", wanted.preview_mm,
                  "Mesh edge of the runs, 1 to 30 mm; corrected to the plan's")
      ->check(CLI::Range(1.0, 30.0))
      ->type_name("MM");
  add_mesh_edge_option(command, wanted.edge_mm);
  command.add_flag("--json", wanted.json, "Print spread.json instead of sentences");
}

}  // namespace

void add_spread(CLI::App& app, Action& action) {
  auto wanted = std::make_shared<SpreadCommand>();
  CLI::App* command =
      app.add_subcommand("spread", "Find how far uncertain inputs move the prediction, and which matter");
  add_options(*command, *wanted);
  command->footer(kSpreadExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_spread(*wanted, streams); }; });
}

}  // namespace wrapgauge
