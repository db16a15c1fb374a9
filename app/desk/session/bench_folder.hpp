#pragma once
// Where the bench of a plan lies, and what the window writes there: the files that the commands of the bench
// write, so that either may go on from the other.

#include <filesystem>
#include <vector>

#include "app/job/bench_files.hpp"
#include "app/job/job.hpp"
#include "model/note/summary.hpp"

namespace wrapgauge {

// Beside the plan's file: "cuff.json" has "cuff-bench".
std::filesystem::path bench_folder(const std::filesystem::path& plan_file);

// sheet.pdf and readings.csv. Problem: readings.csv holds readings already; it cannot be written.
Result<std::monostate> write_bench_sheet(const BenchSheet& sheet, const Job& job,
                                         const std::filesystem::path& folder);

// The report of a fit, and its calibration under a name of its own, so that a plan that names an earlier one
// keeps it. The name of the calibration's file.
Result<std::filesystem::path> write_bench_fit(BenchResult fit, const Job& job,
                                              const std::filesystem::path& folder,
                                              const std::filesystem::path& readings);

}  // namespace wrapgauge
