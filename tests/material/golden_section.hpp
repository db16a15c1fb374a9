#pragma once
#include <cmath>
#include <utility>

namespace wrapgauge {

// Largest value of f on [low, high] by golden-section search: place and value.
template <class Function>
std::pair<double, double> maximum(Function f, double low, double high) {
  const double ratio = 0.5 * (std::sqrt(5.0) - 1.0);
  while (high - low > 1e-9) {
    const double a = high - ratio * (high - low), b = low + ratio * (high - low);
    (f(a) < f(b) ? low : high) = f(a) < f(b) ? a : b;
  }
  return {0.5 * (low + high), f(0.5 * (low + high))};
}

}  // namespace wrapgauge
