#pragma once
#include <filesystem>
#include <optional>

#include "app/command/commands.hpp"
#include "app/job/job.hpp"
#include "model/bench/bench_model.hpp"

namespace CLI {
class App;
}

namespace wrapgauge {

// What the commands of the bench share.
struct BenchOptions {
  std::filesystem::path plan, folder;
  std::optional<double> edge_mm;
};
// The plan first, then what `own` adds, --out and --edge-mm. `wanted` outlives the parsing.
void add_plan_of_bench(CLI::App& command, BenchOptions& wanted);
void add_folder_of_bench(CLI::App& command, BenchOptions& wanted);

// The plan on the mesh asked for; pictures can be drawn from here on.
Result<Job> read_bench_job(const BenchOptions& wanted, Streams streams, PlanCalibration calibration);
// Refers to `job`.
BenchJob bench_job_of(const Job& job, const BenchOptions& wanted);

}  // namespace wrapgauge
