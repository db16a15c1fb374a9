#pragma once
// What predicted pressures are multiplied by before they are held against a limit, from contact readings.

#include <string>
#include <vector>

#include "model/bench/bench_fit.hpp"
#include "model/core/phrase.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

inline constexpr double kUncalibratedFactor = 1.5;  // judgement, as in limits.json
inline constexpr double kLeastModelFactor = 1.15;   // judgement: no bench is exact
inline constexpr int kFewestContact = 8, kFewestChambers = 2, kFewestLevels = 2;

struct ModelFactor {
  double factor = kUncalibratedFactor;
  bool from_readings = false;  // else 1.5 holds, or what a reading raises it to
  int contact = 0, chambers = 0, levels = 0;
  double middle = 1.0;   // read over fitted, geometric mean
  double bound = 0.0;    // upper 95 % tolerance bound, the sensor's error included; 0: too few
  double highest = 0.0;  // of a single reading, its sensor's error included
  Phrase why;            // one sentence
};

// Upper bound that holds 95 % of ratios with 95 % confidence (ISO 16269-6, one-sided tolerance interval of a
// normal distribution, by the noncentral t; from memory), of their logarithms. A sensor's error may be common
// to all its readings, so that their scatter does not show it: it is added to the scatter in quadrature.
double tolerance_bound(const std::vector<double>& log_ratios, double sensor_error);

// `same_part`: the contact was read on a limb of the plan's part. A single reading above 1.5 raises the
// factor at once, however few there are.
ModelFactor model_factor(const std::vector<Reading>& rows, const BenchFit& fit, const Layout& layout,
                         bool same_part);

}  // namespace wrapgauge
