#pragma once
#include <filesystem>

#include "app/command/commands.hpp"
#include "app/job/job.hpp"

namespace wrapgauge {

// read_job, and one sentence on `err` where the plan, which may come from elsewhere, reads files outside its
// folder.
Result<Job> read_plan_job(const std::filesystem::path& plan_file, Streams streams,
                          PlanCalibration calibration = PlanCalibration::kTaken);

}  // namespace wrapgauge
