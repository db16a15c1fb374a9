#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/bench_options.hpp"
#include "app/command/terminal_progress.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/job/bench_files.hpp"
#include "model/bench/fit_report.hpp"
#include "model/bench/readings_file.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kBenchFitExamples =
    "Examples:\n"
    "  wrapgauge bench fit cuff.json readings.csv --out cuff-bench\n"
    "Writes calibration.json, which the plan may name as its \"calibration\", fit.pdf,\n"
    "agreement.png, residuals.png and fitted.csv. A reading that looks like a slip\n"
    "ends it with a question; nothing is changed or left out.\n";

struct BenchFitCommand {
  BenchOptions bench;
  std::filesystem::path readings;
};

int write_fit(const BenchResult& result, const Job& job, const BenchFitCommand& command, ResultFolder& place,
              Streams streams) {
  if (auto written = write_made(place, make_fit_files(result, job.plan.name), streams); !written)
    return say_problem(written.problem(), streams);
  for (const Phrase& sentence : fit_words(result)) streams.out << wrapped(english(sentence), 2);
  streams.out << wrapped("Not a medical device. Written to " + command.bench.folder.string() +
                         "; name calibration.json in the plan as its \"calibration\" to use it.");
  return kExitDone;
}

int run_bench_fit(const BenchFitCommand& command, Streams streams) {
  const auto job = read_bench_job(command.bench, streams, PlanCalibration::kLeftOut);
  if (!job) return say_problem(job.problem(), streams);
  const auto readings = read_readings(command.readings, job->plan.layout);
  if (!readings) return say_problem(readings.problem(), streams);
  auto opened = open_bench_folder(command.bench, *job, "readings", command.readings);
  if (!opened) return say_problem(opened.problem(), streams);
  ResultFolder place = std::move(opened).value();
  std::optional<Result<BenchResult>> result;
  {
    TerminalProgress progress;
    result = calibrate(bench_job_of(*job, command.bench), *readings, progress);
  }
  if (!*result) return say_problem(result->problem(), streams);
  BenchResult whole = std::move(*result).value();
  whole.calibration.readings_file = readings_beside(command.bench.folder, command.readings);
  return write_fit(whole, *job, command, place, streams);
}

}  // namespace

void add_bench_fit(CLI::App& bench, Action& action) {
  auto wanted = std::make_shared<BenchFitCommand>();
  CLI::App* command =
      bench.add_subcommand("fit", "Fit the plan's sheets and tissue to readings of its device");
  add_plan_of_bench(*command, wanted->bench);
  command->add_option("readings", wanted->readings, "What was read, a CSV file")
      ->required()
      ->type_name("READINGS");
  add_folder_of_bench(*command, wanted->bench);
  command->footer(kBenchFitExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_bench_fit(*wanted, streams); }; });
}

}  // namespace wrapgauge
