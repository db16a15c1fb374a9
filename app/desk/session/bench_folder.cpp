#include "app/desk/session/bench_folder.hpp"

#include "app/job/study_inputs.hpp"
#include "model/bench/calibration_file.hpp"
#include "model/core/file.hpp"

namespace wrapgauge {
namespace {

Result<std::monostate> write_part(const Result<ResultPart>& part, ResultOrigin origin,
                                  const std::filesystem::path& folder) {
  if (!part) return part.problem();
  auto place = ResultFolder::open(folder, std::move(origin));
  if (!place) return place.problem();
  return std::move(place).value().write({*part});
}

}  // namespace

std::filesystem::path bench_folder(const std::filesystem::path& plan_file) {
  return plan_file.parent_path() / (plan_file.stem().string() + "-bench");
}

Result<std::monostate> write_bench_sheet(const BenchSheet& sheet, const Job& job,
                                         const std::filesystem::path& folder) {
  if (auto left = leave_readings(folder); !left) return left.problem();
  return write_part(make_sheet_files(sheet, job.plan, job.body), origin_of(job), folder);
}

Result<std::filesystem::path> write_bench_fit(BenchResult fit, const Job& job,
                                              const std::filesystem::path& folder,
                                              const std::filesystem::path& readings) {
  fit.calibration.readings_file = readings_beside(folder, readings);
  auto origin = origin_with(job, "readings", readings);
  if (!origin) return origin.problem();
  if (auto written = write_part(make_fit_files(fit, job.plan.name), *origin, folder); !written)
    return written.problem();
  const std::string json = calibration_json(fit);
  const std::filesystem::path file = folder / ("calibration-" + sha256_of(json).substr(0, 8) + ".json");
  if (auto written = write_file_atomically(file, json); !written) return written.problem();
  return file;
}

}  // namespace wrapgauge
