#include "app/command/plan_job.hpp"

#include "app/command/wrapped_text.hpp"

namespace wrapgauge {

Result<Job> read_plan_job(const std::filesystem::path& plan_file, Streams streams,
                          PlanCalibration calibration) {
  auto job = read_job(plan_file, calibration);
  if (!job) return job;
  std::string names;
  const auto outside = files_outside(job->plan);
  for (const std::filesystem::path& file : outside) names += (names.empty() ? "" : ", ") + file.string();
  if (!outside.empty())
    streams.err << wrapped(plan_file.filename().string() + " reads " +
                               (outside.size() > 1 ? "files" : "a file") + " outside its folder: " + names +
                               ".",
                           2);
  return job;
}

}  // namespace wrapgauge
