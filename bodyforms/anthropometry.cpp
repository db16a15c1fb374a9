#include "bodyforms/anthropometry.hpp"

#include <cmath>
#include <numbers>
#include <string>

#include "model/core/number_text.hpp"

namespace wrapgauge {

// Bisection: the probability below z is erfc(-z / sqrt 2) / 2.
double normal_deviate(double percentile) {
  double low = -10.0, high = 10.0;
  for (int step = 0; step < 80; ++step) {
    const double middle = 0.5 * (low + high);
    (50.0 * std::erfc(-middle / std::numbers::sqrt2) < percentile ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

Result<double> body_measure_mm(std::string_view name, Sex sex, double percentile) {
  if (!(percentile >= kTablePercentiles.front() && percentile <= kTablePercentiles.back()))
    return bad_input(Phrase::worded("the percentile is %1; the table of body measures goes from 1 to 99.",
                                    {figures_of(fixed_text(percentile, 2))}));
  for (const BodyMeasure& measure : body_measures()) {
    if (measure.name != name) continue;
    const auto& column = sex == Sex::kMale ? measure.men_mm : measure.women_mm;
    std::size_t i = 0;
    while (i + 2 < kTablePercentiles.size() && percentile > kTablePercentiles[i + 1]) ++i;
    const double from = normal_deviate(kTablePercentiles[i]), to = normal_deviate(kTablePercentiles[i + 1]);
    const double share = (normal_deviate(percentile) - from) / (to - from);
    return column[i] + share * (column[i + 1] - column[i]);
  }
  return bad_input(
      Phrase::worded("there is no body measure '%1' in the table.", {name_of(std::string(name))}));
}

}  // namespace wrapgauge
