#pragma once
#include <filesystem>
#include <optional>

#include "app/command/commands.hpp"
#include "app/job/job.hpp"
#include "app/job/result_folder.hpp"
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
// The plan comes first, --out and --edge-mm last. `wanted` outlives the parsing.
void add_plan_of_bench(CLI::App& command, BenchOptions& wanted);
void add_folder_of_bench(CLI::App& command, BenchOptions& wanted);

// The plan on the mesh asked for; pictures can be drawn from here on.
Result<Job> read_bench_job(const BenchOptions& wanted, Streams streams, PlanCalibration calibration);
// Refers to `job`.
BenchJob bench_job_of(const Job& job, const BenchOptions& wanted);

// The folder for what is made of the plan and one file more, such as readings.
Result<ResultFolder> open_bench_folder(const BenchOptions& wanted, const Job& job, const std::string& role,
                                       const std::filesystem::path& file);
// Writes what was made, if it was.
Result<std::monostate> write_made(ResultFolder& place, const Result<ResultPart>& made, Streams streams);

}  // namespace wrapgauge
