#include "model/casting/free_circle.hpp"

#include <algorithm>
#include <cmath>

#include "model/geometry/planar_triangulation.hpp"
#include "model/layout/layout_shapes.hpp"

namespace wrapgauge {
namespace {

constexpr double kApart_m = 1e-3;  // of the points on the walls

void add_points(std::vector<std::pair<Vec2, Vec2>>& lines, const Polygon& loop) {
  for (std::size_t i = 0; i < loop.size(); ++i) {
    const Vec2 &from = loop[i], &to = loop[(i + 1) % loop.size()];
    const int count = std::max(1, static_cast<int>(std::ceil((to - from).norm() / kApart_m)));
    const auto at = [&](int k) { return Vec2(from + static_cast<double>(k) / count * (to - from)); };
    for (int k = 0; k < count; ++k) lines.emplace_back(at(k), k + 1 < count ? at(k + 1) : to);
  }
}

// Round the three corners; a radius of zero where they lie on one line.
FreeCircle circle_round(const Vec2& a, const Vec2& b, const Vec2& c) {
  const Vec2 u = b - a, v = c - a;
  const double twice = 2.0 * cross(u, v);
  if (std::abs(twice) < 1e-14) return {};
  const Vec2 to_centre((v.y() * u.squaredNorm() - u.y() * v.squaredNorm()) / twice,
                       (u.x() * v.squaredNorm() - v.x() * u.squaredNorm()) / twice);
  return {a + to_centre, to_centre.norm()};
}

}  // namespace

// The circle touches three points of the walls and holds none: it is the one round a Delaunay triangle.
FreeCircle largest_free_circle(const Polygon& loop, const std::vector<Polygon>& welds) {
  std::vector<std::pair<Vec2, Vec2>> lines;
  add_points(lines, loop);
  for (const Polygon& weld : welds) add_points(lines, weld);
  const PlanarTriangulation mesh = constrained_delaunay(noded_graph(lines, kDrawingTolerance));
  std::vector<FreeCircle> circles;
  for (const auto& corners : mesh.triangles)
    circles.push_back(
        circle_round(mesh.points_m[corners[0]], mesh.points_m[corners[1]], mesh.points_m[corners[2]]));
  std::stable_sort(circles.begin(), circles.end(),
                   [](const FreeCircle& a, const FreeCircle& b) { return a.radius_m > b.radius_m; });
  for (const FreeCircle& circle : circles) {
    const Vec2& p = circle.centre_m;
    if (!contains(loop, p) ||
        std::any_of(welds.begin(), welds.end(), [&](const Polygon& weld) { return contains(weld, p); }))
      continue;
    double radius = distance_to_loop_m(loop, p);
    for (const Polygon& weld : welds) radius = std::min(radius, distance_to_loop_m(weld, p));
    if (radius > circle.radius_m - 0.1 * kApart_m) return {p, radius};
  }
  return {};
}

}  // namespace wrapgauge
