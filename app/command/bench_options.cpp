#include "app/command/bench_options.hpp"

#include <CLI/CLI.hpp>

#include "app/command/mesh_edge_option.hpp"
#include "app/command/plan_job.hpp"
#include "app/job/study_inputs.hpp"
#include "app/picture/picture_program.hpp"

namespace wrapgauge {

void add_plan_of_bench(CLI::App& command, BenchOptions& wanted) {
  command.add_option("plan", wanted.plan, "The plan, a JSON file")->required()->type_name("PLAN");
}

void add_folder_of_bench(CLI::App& command, BenchOptions& wanted) {
  command.add_option("--out", wanted.folder, "Folder for what is written; made if it is missing")
      ->required()
      ->type_name("DIR");
  add_mesh_edge_option(command, wanted.edge_mm);
}

Result<Job> read_bench_job(const BenchOptions& wanted, Streams streams, PlanCalibration calibration) {
  auto read = read_plan_job(wanted.plan, streams, calibration);
  if (!read) return read.problem();
  Job job = std::move(read).value();
  if (wanted.edge_mm) job.plan.mesh_edge = *wanted.edge_mm * mm;
  if (auto started = start_picture_program(); !started) return started.problem();
  return job;
}

BenchJob bench_job_of(const Job& job, const BenchOptions& wanted) {
  BenchJob bench{job.plan, job.body, job.resources};
  if (wanted.edge_mm) bench.finest_edge = *wanted.edge_mm * mm;
  return bench;
}

Result<ResultFolder> open_bench_folder(const BenchOptions& wanted, const Job& job, const std::string& role,
                                       const std::filesystem::path& file) {
  auto origin = origin_with(job, role, file);
  if (!origin) return origin.problem();
  return ResultFolder::open(wanted.folder, std::move(origin).value());
}

Result<std::monostate> write_made(ResultFolder& place, const Result<ResultPart>& made, Streams streams) {
  if (!made) return made.problem();
  return write_set(place, {*made}, streams);
}

}  // namespace wrapgauge
