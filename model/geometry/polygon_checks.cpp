#include "model/geometry/polygon_checks.hpp"

#include <algorithm>
#include <limits>

#include "model/geometry/planar_triangulation.hpp"

namespace wrapgauge {
namespace {

constexpr double kTolerance = 1e-7;  // 0.1 micrometres: rounding of drawn numbers, not a drawn gap

// Where two closed segments meet, ends included.
std::optional<Vec2> meeting(const Vec2& a, const Vec2& b, const Vec2& c, const Vec2& d) {
  for (const Vec2& p : {c, d})
    if (distance_to_segment_m(p, a, b) <= 1e-12) return p;
  for (const Vec2& p : {a, b})
    if (distance_to_segment_m(p, c, d) <= 1e-12) return p;
  const double denominator = cross(b - a, d - c);
  if (denominator == 0.0) return std::nullopt;
  const double s = cross(c - a, d - c) / denominator, t = cross(c - a, b - a) / denominator;
  if (s < 0.0 || s > 1.0 || t < 0.0 || t > 1.0) return std::nullopt;
  return Vec2(a + s * (b - a));
}

Vec2 nearest_on_segment(const Vec2& p, const Vec2& a, const Vec2& b) {
  const double length2 = (b - a).squaredNorm();
  return length2 > 0.0 ? Vec2(a + std::clamp((p - a).dot(b - a) / length2, 0.0, 1.0) * (b - a)) : a;
}

void add_loop(std::vector<std::pair<Vec2, Vec2>>& lines, const Polygon& loop) {
  for (std::size_t i = 0; i < loop.size(); ++i) lines.emplace_back(loop[i], loop[(i + 1) % loop.size()]);
}

PlanarTriangulation overlay(const Polygon& a, const Polygon& b) {
  std::vector<std::pair<Vec2, Vec2>> lines;
  add_loop(lines, a);
  add_loop(lines, b);
  return constrained_delaunay(noded_graph(lines, kTolerance));
}

}  // namespace

std::optional<Vec2> self_crossing(const Polygon& loop) {
  const std::size_t n = loop.size();
  if (n < 4) return std::nullopt;
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = i + 2; j < n; ++j) {
      if (i == 0 && j + 1 == n) continue;  // neighbours across the end of the list
      const Vec2 &a = loop[i], &b = loop[i + 1], &c = loop[j], &d = loop[(j + 1) % n];
      if (boxes_apart(a, b, c, d)) continue;
      if (const auto p = meeting(a, b, c, d)) return p;
    }
  // A spike that runs back over itself.
  for (std::size_t i = 0; i < n; ++i) {
    const Vec2 in = loop[(i + 1) % n] - loop[i], out = loop[(i + 2) % n] - loop[(i + 1) % n];
    if (in.dot(out) < 0.0 && std::abs(cross(in, out)) <= 1e-9 * in.norm() * out.norm())
      return loop[(i + 1) % n];
  }
  return std::nullopt;
}

ClosestPlaces closest_places(const Polygon& loop, const Polygon& other) {
  ClosestPlaces best{std::numeric_limits<double>::infinity(), Vec2::Zero(), Vec2::Zero()};
  const auto consider = [&best](const Vec2& p, const Vec2& q) {
    if ((p - q).norm() < best.distance_m) best = {(p - q).norm(), p, q};
  };
  for (std::size_t i = 0; i < loop.size(); ++i)
    for (std::size_t j = 0; j < other.size(); ++j) {
      const Vec2 &a = loop[i], &b = loop[(i + 1) % loop.size()];
      const Vec2 &c = other[j], &d = other[(j + 1) % other.size()];
      if (!boxes_apart(a, b, c, d))
        if (const auto p = meeting(a, b, c, d)) return {0.0, *p, *p};
      consider(a, nearest_on_segment(a, c, d));
      consider(nearest_on_segment(c, a, b), c);
    }
  return best;
}

double common_area_m2(const Polygon& a, const Polygon& b) {
  if (a.size() < 3 || b.size() < 3) return 0.0;
  const Bounds2 box_a = bounds(a), box_b = bounds(b);
  if (boxes_apart(box_a.low, box_a.high, box_b.low, box_b.high)) return 0.0;
  const PlanarTriangulation both = overlay(a, b);
  double sum = 0.0;
  for (const auto& t : both.triangles) {
    const Polygon triangle{both.points_m[t[0]], both.points_m[t[1]], both.points_m[t[2]]};
    const Vec2 middle = (triangle[0] + triangle[1] + triangle[2]) / 3.0;
    if (contains(a, middle) && contains(b, middle)) sum += signed_area_m2(triangle);
  }
  return sum;
}

std::optional<Outside> farthest_outside(const Polygon& inner, const Polygon& outer) {
  std::optional<Outside> worst;
  const PlanarTriangulation both = overlay(inner, outer);
  for (const auto& t : both.triangles) {
    const Vec2 middle = (both.points_m[t[0]] + both.points_m[t[1]] + both.points_m[t[2]]) / 3.0;
    if (!contains(inner, middle) || contains(outer, middle)) continue;
    for (const int corner : t) {
      const Vec2& p = both.points_m[corner];
      const double distance = distance_to_loop_m(outer, p);
      if (distance > kTolerance && (!worst || distance > worst->distance_m)) worst = Outside{p, distance};
    }
    // Outside without a corner there: a notch of the outer loop covered by the inner one.
    const double distance = distance_to_loop_m(outer, middle);
    if (distance > kTolerance && (!worst || distance > worst->distance_m)) worst = Outside{middle, distance};
  }
  return worst;
}

}  // namespace wrapgauge
