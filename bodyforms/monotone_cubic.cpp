#include "bodyforms/monotone_cubic.hpp"

#include <algorithm>

namespace wrapgauge {
namespace {

double slope_between(const Vec2& a, const Vec2& b) {
  return (b.y() - a.y()) / (b.x() - a.x());
}

// Zero at a turning point; else a weighted harmonic mean of the slopes on both sides. At an end the neighbour
// slope, so that two knots give a straight line.
double knot_slope(const std::vector<Vec2>& knots, std::size_t i) {
  const std::size_t last = knots.size() - 1;
  if (i == 0) return slope_between(knots[0], knots[1]);
  if (i == last) return slope_between(knots[last - 1], knots[last]);
  const double before = slope_between(knots[i - 1], knots[i]), after = slope_between(knots[i], knots[i + 1]);
  if (before * after <= 0.0) return 0.0;
  const double h0 = knots[i].x() - knots[i - 1].x(), h1 = knots[i + 1].x() - knots[i].x();
  return 3.0 * (h0 + h1) / ((2.0 * h1 + h0) / before + (h1 + 2.0 * h0) / after);
}

}  // namespace

double monotone_cubic(const std::vector<Vec2>& knots, double x) {
  if (knots.size() == 1) return knots[0].y();
  std::size_t i = 0;
  while (i + 2 < knots.size() && x > knots[i + 1].x()) ++i;
  const double step = knots[i + 1].x() - knots[i].x();
  const double t = std::clamp((x - knots[i].x()) / step, 0.0, 1.0), u = 1.0 - t;
  return knots[i].y() * (u * u * (1.0 + 2.0 * t)) + knots[i + 1].y() * (t * t * (3.0 - 2.0 * t)) +
         step * (knot_slope(knots, i) * t * u * u - knot_slope(knots, i + 1) * t * t * u);
}

}  // namespace wrapgauge
