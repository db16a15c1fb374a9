#include "model/study/runs_forecast.hpp"

#include <tbb/task_arena.h>

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/core/time_text.hpp"
#include "model/pipeline/solve_forecast.hpp"

namespace wrapgauge {

RunsForecast forecast_runs(std::size_t runs, bool ceiling, const Plan& first, const Prepared& prepared) {
  constexpr double kBeside_s = 1.3;  // laying it on and reading every state, beside solving; docs/09-vary.md
  constexpr double kCeilingSolves = 8.0;
  constexpr double kProgram_mb = 60.0, kThread_mb = 25.0, kNodes = 768.0;  // docs/09-vary.md
  const SolveForecast one = forecast_solve(first, prepared, {.mesh_error = false, .relief = false});
  RunsForecast forecast{.runs = runs, .time = {}, .threads = tbb::this_task_arena::max_concurrency()};
  const double larger = std::max(1.0, one.nodes / kNodes);
  const Time one_run = (one.time + kBeside_s * larger * second) * (ceiling ? 1.0 + kCeilingSolves : 1.0);
  const double side_by_side = std::min(static_cast<double>(runs), static_cast<double>(forecast.threads));
  if (runs > 0) forecast.time = one_run * (static_cast<double>(runs) / side_by_side);
  forecast.memory_mb = kProgram_mb + side_by_side * kThread_mb * larger;
  return forecast;
}

std::string forecast_words(const RunsForecast& forecast, const std::string& what) {
  return "time: " + std::to_string(forecast.runs) + " " + what + " to solve take about " +
         rough_time_text(forecast.time) + " on " + std::to_string(forecast.threads) +
         (forecast.threads == 1 ? " core" : " cores") + " and " +
         fixed_text(10.0 * std::ceil(forecast.memory_mb / 10.0), 0) +
         " MB of memory; Ctrl-C stops it and keeps what is solved.";
}

}  // namespace wrapgauge
