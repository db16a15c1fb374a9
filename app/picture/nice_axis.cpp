#include "app/picture/nice_axis.hpp"

#include <algorithm>
#include <cmath>

namespace wrapgauge {

NiceAxis nice_axis(double least_top, int most_steps) {
  constexpr double kRounding = 1e-9;
  const double least_step = least_top / most_steps * (1.0 - kRounding);
  const int power = static_cast<int>(std::floor(std::log10(least_step)));
  const double unit = std::pow(10.0, power);
  for (const double factor : {1.0, 2.0, 2.5, 5.0, 10.0}) {
    if (factor * unit < least_step) continue;
    const double step = factor * unit;
    const int digits = (factor == 2.5 ? 1 : 0) - power - (factor == 10.0 ? 1 : 0);
    return {step, static_cast<int>(std::ceil(least_top / step * (1.0 - kRounding))), std::max(0, digits)};
  }
  return {};
}

double round_step(double top, double most_steps, double least) {
  for (double step = least;; step *= 10.0)
    for (const double factor : {1.0, 2.0, 5.0})
      if (top / (factor * step) <= most_steps) return factor * step;
}

double scale_length_mm(double pixels_per_m, double most_pixels) {
  double length_mm = 0.5;
  for (const double candidate : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0})
    if (candidate * 1e-3 * pixels_per_m <= most_pixels) length_mm = candidate;
  return length_mm;
}

}  // namespace wrapgauge
