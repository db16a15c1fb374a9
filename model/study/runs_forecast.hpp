#pragma once
// How long many runs of one plan will take, and how much memory, before the first of them.

#include <string>

#include "model/pipeline/prepare.hpp"

namespace wrapgauge {

struct RunsForecast {
  std::size_t runs = 0;
  Time time;  // of all of them on `threads`
  int threads = 1;
  double memory_mb = 0.0;
};

// An order of magnitude, from the measured law of one solve (solve_forecast.hpp); what stands beside a solve
// and memory as measured on the demo cuff (docs/09-vary.md). `first`: the first of them, prepared on the mesh
// of the runs. `ceiling`: each run looks for its ceiling too.
RunsForecast forecast_runs(std::size_t runs, bool ceiling, const Plan& first, const Prepared& prepared);

// One sentence; `what`: "variants".
std::string forecast_words(const RunsForecast& forecast, const std::string& what);

}  // namespace wrapgauge
