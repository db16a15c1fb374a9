#pragma once
// From a file of readings to a calibration: predicted, checked for slips, fitted.

#include "model/bench/bench_model.hpp"
#include "model/bench/model_factor.hpp"
#include "model/limits/calibration.hpp"

namespace wrapgauge {

struct BenchResult {
  Readings readings;
  std::vector<std::optional<double>> nominal;  // SI, a row each: predicted before the fit
  BenchFit fit;
  ModelFactor model_factor;
  Calibration calibration;  // without the readings' place, which only the caller knows
  Length mesh_edge, preview_edge;
};

// `job.resources` with or without a calibration: none is used. Problems: those of BenchModel::make, slip_of
// and fit_bench.
Result<BenchResult> calibrate(const BenchJob& job, const Readings& readings, Progress& progress);

// Changes with the sheets' laws and the tissue's row.
Result<std::string> materials_hash(const Plan& plan, const Body& body, const Resources& resources);

// What a seam holds, by the masses at which peeled strips opened; none: no such reading.
std::optional<SeamHold> seam_hold(const std::vector<Reading>& rows);

}  // namespace wrapgauge
