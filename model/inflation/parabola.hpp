#pragma once
#include <utility>

namespace wrapgauge {

// Place and height of the vertex of the parabola through three points, x increasing.
inline std::pair<double, double> parabola_top(const double (&x)[3], const double (&y)[3]) {
  const double d1 = (y[1] - y[0]) / (x[1] - x[0]), d2 = (y[2] - y[1]) / (x[2] - x[1]);
  const double curvature = (d2 - d1) / (x[2] - x[0]);
  const double top = 0.5 * (x[0] + x[1]) - d1 / (2.0 * curvature);
  return {top, y[0] + d1 * (top - x[0]) + curvature * (top - x[0]) * (top - x[1])};
}

}  // namespace wrapgauge
