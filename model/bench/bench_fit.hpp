#pragma once
// Factors that bring the predictions onto the readings, with how well the readings tell each of them.

#include <string>
#include <vector>

#include "model/bench/fit_parameters.hpp"
#include "model/bench/reading.hpp"
#include "model/bench/response_table.hpp"
#include "model/core/progress.hpp"

namespace wrapgauge {

// 95 % bands: from the derivatives at the fit, and from fits to readings drawn anew round it (bootstrap).
struct FittedParameter {
  FitParameter which = FitParameter::kSkinLaw;
  bool told = false;   // by the readings; else it stays as it was, and the values say so
  double value = 0.0;  // a factor, or mm thicker than drawn
  double low = 0.0, high = 0.0;
  double drawn_low = 0.0, drawn_high = 0.0;
};

struct FittedReading {
  std::size_t row = 0;
  double read = 0.0, nominal = 0.0, fitted = 0.0;  // SI
  double standard = 0.0;                           // ln(read / fitted) over the standard error
  bool outlier = false;
};

struct BenchFit {
  SheetFactors factors;
  std::vector<FittedParameter> parameters;  // those that a reading could tell of
  std::vector<FittedReading> readings;
  double misfit = 0.0;   // sum of squares over its degrees of freedom: 1 where errors are as stated
  double widened = 1.0;  // what the bands were widened by, because readings scatter more than stated
  std::vector<Phrase> cannot_tell;  // whole sentences
  ResponseTable table;              // at the fit
};

inline constexpr double kOutlier = 3.0;  // standard errors: named, never left out
// A factor whose 95 % band would be wider than half to twice it is not told.
inline constexpr double kUntold = 0.35;
inline constexpr int kBootstrapDraws = 400;

struct FitTask {
  const std::vector<Reading>& rows;
  std::vector<std::size_t> fitted;  // rows that are predicted
  std::vector<double> nominal;      // SI, one each
  bool tells_of_tissue = false;
  std::uint64_t seed = 20;  // of the draws
};

// `response`: of the fitted rows. Problems: those of least_squares; fewer than 3 readings; a factor that ends
// outside 0.3 to 3.
Result<BenchFit> fit_bench(const FitTask& task, const LogResponse& response);

// Derivatives by forward differences; `settled` is called where they are taken, before the first step.
// The last ones are kept, so that asking twice at one place costs one.
LogResponse with_differences(LogPredictor predict, std::function<void()> settled, std::vector<bool> is_free);

}  // namespace wrapgauge
