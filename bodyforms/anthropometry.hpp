#pragma once
// Body measures by sex and percentile.
//
// Source: ANSUR II, the 2012 anthropometric survey of U.S. Army personnel (Gordon et al. 2014,
// NATICK/TR-15/007): 4082 men and 1986 women. Percentiles confirmed: worked out from its public data files.
// The sample is soldiers with a median age of 27 to 28, so it is fitter than the public, most of all at the
// upper percentiles; limb girths of muscles were taken tensed where a row says so. One person is not at the
// same percentile of every measure.

#include <array>
#include <string_view>
#include <vector>

#include "model/body/person.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

inline constexpr std::array<double, 7> kTablePercentiles{1, 5, 25, 50, 75, 95, 99};

struct BodyMeasure {
  std::string_view name;  // as the survey's files call it
  std::string_view words;
  std::array<double, 7> men_mm, women_mm;  // at kTablePercentiles
};

const std::vector<BodyMeasure>& body_measures();

// Between the columns the measure is linear in the normal deviate of the percentile, which is exact for a
// measure that is normally distributed between two columns. Problems: an unknown measure, a percentile
// outside 1 to 99 (the table ends there).
Result<double> body_measure_mm(std::string_view name, Sex sex, double percentile);

// The number z with standard normal probability `percentile` / 100 below it; 0 < percentile < 100.
double normal_deviate(double percentile);

}  // namespace wrapgauge
