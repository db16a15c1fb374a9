#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/bench_options.hpp"
#include "app/command/terminal_progress.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/job/bench_files.hpp"
#include "app/job/study_inputs.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kBenchSheetExamples =
    "Examples:\n"
    "  wrapgauge bench sheet cuff.json --out cuff-bench\n"
    "Writes sheet.pdf to print, with the steps and what is predicted, and\n"
    "readings.csv with the same rows to type into. Off the body first.\n";

int run_bench_sheet(const BenchOptions& command, Streams streams) {
  if (auto left = leave_readings(command.folder); !left) return say_problem(left.problem(), streams);
  const auto job = read_bench_job(command, streams, PlanCalibration::kLeftOut);
  if (!job) return say_problem(job.problem(), streams);
  auto opened = ResultFolder::open(command.folder, origin_of(*job));
  if (!opened) return say_problem(opened.problem(), streams);
  ResultFolder place = std::move(opened).value();
  std::optional<Result<BenchSheet>> sheet;
  {
    TerminalProgress progress;
    sheet = bench_sheet(bench_job_of(*job, command), progress);
  }
  if (!*sheet) return say_problem(sheet->problem(), streams);
  if (auto written = write_made(place, make_sheet_files(**sheet, job->plan, job->body), streams); !written)
    return say_problem(written.problem(), streams);
  for (const std::string& sentence : (*sheet)->left_out) streams.out << wrapped(sentence, 2);
  streams.out << wrapped(std::to_string((*sheet)->rows.size()) +
                         " readings proposed. Off the body first; on a person "
                         "only after that, within the limits, under the study's rules. Written to " +
                         command.folder.string());
  return kExitDone;
}

}  // namespace

void add_bench_sheet(CLI::App& bench, Action& action) {
  auto wanted = std::make_shared<BenchOptions>();
  CLI::App* command =
      bench.add_subcommand("sheet", "Write the sheet to fill in on a bench, with predictions");
  add_plan_of_bench(*command, *wanted);
  add_folder_of_bench(*command, *wanted);
  command->footer(kBenchSheetExamples);
  command->callback([&action, wanted] {
    action = [wanted](Streams streams) { return run_bench_sheet(*wanted, streams); };
  });
}

}  // namespace wrapgauge
