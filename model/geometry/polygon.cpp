#include "model/geometry/polygon.hpp"

#include <algorithm>
#include <limits>

namespace wrapgauge {

double signed_area_m2(const Polygon& polygon) {
  double twice = 0.0;
  if (polygon.empty()) return 0.0;
  // Relative to the first point, so that a loop far from the origin keeps its digits.
  for (std::size_t i = 1; i + 1 < polygon.size(); ++i) {
    const Vec2 a = polygon[i] - polygon[0], b = polygon[i + 1] - polygon[0];
    twice += a.x() * b.y() - a.y() * b.x();
  }
  return 0.5 * twice;
}

double length_m(const Polyline& path) {
  double sum = 0.0;
  for (std::size_t i = 1; i < path.size(); ++i) sum += (path[i] - path[i - 1]).norm();
  return sum;
}

double perimeter_m(const Polygon& polygon) {
  return polygon.empty() ? 0.0 : length_m(polygon) + (polygon.front() - polygon.back()).norm();
}

bool contains(const Polygon& polygon, const Vec2& point) {
  bool inside = false;
  for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
    const Vec2 &a = polygon[i], &b = polygon[j];
    if ((a.y() > point.y()) == (b.y() > point.y())) continue;
    const double x = a.x() + (point.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
    if (point.x() < x) inside = !inside;
  }
  return inside;
}

Polygon counter_clockwise(Polygon polygon) {
  polygon.erase(std::unique(polygon.begin(), polygon.end()), polygon.end());
  while (polygon.size() > 1 && polygon.front() == polygon.back()) polygon.pop_back();
  if (signed_area_m2(polygon) < 0.0) std::reverse(polygon.begin() + 1, polygon.end());
  return polygon;
}

Bounds2 bounds(const std::vector<Vec2>& points) {
  if (points.empty()) return {};
  Bounds2 box{points.front(), points.front()};
  for (const Vec2& p : points) {
    box.low = box.low.cwiseMin(p);
    box.high = box.high.cwiseMax(p);
  }
  return box;
}

double distance_to_segment_m(const Vec2& point, const Vec2& a, const Vec2& b) {
  const Vec2 ab = b - a;
  const double length2 = ab.squaredNorm();
  const double t = length2 > 0.0 ? std::clamp((point - a).dot(ab) / length2, 0.0, 1.0) : 0.0;
  return (point - a - t * ab).norm();
}

double distance_to_loop_m(const Polygon& polygon, const Vec2& point) {
  double best = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++)
    best = std::min(best, distance_to_segment_m(point, polygon[i], polygon[j]));
  return best;
}

}  // namespace wrapgauge
