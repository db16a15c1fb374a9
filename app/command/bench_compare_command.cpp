#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/bench_options.hpp"
#include "app/command/terminal_progress.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/job/bench_files.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kBenchCompareExamples =
    "Examples:\n"
    "  wrapgauge bench compare cuff.json map.csv --out cuff-map\n"
    "Writes comparison.png, read beside predicted with the difference, and\n"
    "comparison.csv, a row a chamber.\n";

struct BenchCompareCommand {
  BenchOptions bench;
  std::filesystem::path map;
};

int write_comparison(const MapComparison& comparison, const SensorMap& map, const Job& job,
                     const BenchCompareCommand& command, ResultFolder& place, Streams streams) {
  const auto files = make_comparison_files(job.plan.layout, map, comparison);
  if (auto written = write_made(place, files, streams); !written)
    return say_problem(written.problem(), streams);
  for (const std::string& sentence : comparison_words(map, comparison)) streams.out << wrapped(sentence, 2);
  streams.out << wrapped(model_words(job.resources.limits.calibration) +
                         "; not a medical device. Written to " + command.bench.folder.string());
  return kExitDone;
}

int run_bench_compare(const BenchCompareCommand& command, Streams streams) {
  const auto job = read_bench_job(command.bench, streams, PlanCalibration::kTaken);
  if (!job) return say_problem(job.problem(), streams);
  const auto map = read_sensor_map(command.map, job->plan.layout);
  if (!map) return say_problem(map.problem(), streams);
  auto opened = open_bench_folder(command.bench, *job, "map", command.map);
  if (!opened) return say_problem(opened.problem(), streams);
  ResultFolder place = std::move(opened).value();
  std::optional<Result<MapComparison>> comparison;
  {
    TerminalProgress progress;
    comparison = compare_map(bench_job_of(*job, command.bench), *map, progress);
  }
  if (!*comparison) return say_problem(comparison->problem(), streams);
  return write_comparison(**comparison, *map, *job, command, place, streams);
}

}  // namespace

void add_bench_compare(CLI::App& bench, Action& action) {
  auto wanted = std::make_shared<BenchCompareCommand>();
  CLI::App* command = bench.add_subcommand("compare", "Hold a sensor map against the predicted one");
  add_plan_of_bench(*command, wanted->bench);
  command->add_option("map", wanted->map, "The grid that was read, a CSV file")->required()->type_name("MAP");
  add_folder_of_bench(*command, wanted->bench);
  command->footer(kBenchCompareExamples);
  command->callback([&action, wanted] {
    action = [wanted](Streams streams) { return run_bench_compare(*wanted, streams); };
  });
}

}  // namespace wrapgauge
