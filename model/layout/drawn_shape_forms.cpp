#include "model/layout/drawn_shape_forms.hpp"

#include <algorithm>
#include <cmath>

namespace wrapgauge {
namespace {

constexpr double kOff = 0.01;  // of the size: how far from true (judgement)
constexpr std::size_t kFewestOnCircle = 8;

// Without points that lie on a straight line between their neighbours.
Polygon corners_of(const Polygon& loop) {
  Polygon out;
  for (std::size_t i = 0; i < loop.size(); ++i) {
    const Vec2 &before = loop[(i + loop.size() - 1) % loop.size()], &after = loop[(i + 1) % loop.size()];
    if (distance_to_segment_m(loop[i], before, after) > 1e-7) out.push_back(loop[i]);
  }
  return out;
}

Vec2 centroid_m(const Polygon& loop) {
  Vec2 sum = Vec2::Zero();
  double area = 0.0;
  for (std::size_t i = 0; i < loop.size(); ++i) {
    const Vec2 a = loop[i] - loop[0], b = loop[(i + 1) % loop.size()] - loop[0];
    const double cross = a.x() * b.y() - a.y() * b.x();
    sum += cross / 3.0 * (a + b);
    area += cross;
  }
  return area == 0.0 ? loop[0] : Vec2(loop[0] + sum / area);
}

bool is_round(const DrawnPath& other, const DrawnPath& path) {
  return &other != &path && other.closed && path.closed && contains(other.points_m, path.points_m.front());
}

Vec2 halfway_m(const Polyline& path) {
  double left = 0.5 * length_m(path);
  for (std::size_t i = 0; i + 1 < path.size(); ++i) {
    const double piece = (path[i + 1] - path[i]).norm();
    if (piece > 0.0 && left <= piece) return path[i] + left / piece * (path[i + 1] - path[i]);
    left -= piece;
  }
  return path.back();
}

}  // namespace

std::optional<InsetLine> as_strip(const DrawnPath& path) {
  if (!path.closed) return std::nullopt;
  const Polygon c = corners_of(path.points_m);
  if (c.size() != 4) return std::nullopt;
  const Vec2 one = c[1] - c[0], other = c[2] - c[1];
  const double shorter = std::min(one.norm(), other.norm());
  // Opposite sides equal, and adjacent ones square to one another.
  if (!(shorter > 0.0) || (c[3] - c[2] + one).norm() > kOff * shorter ||
      std::abs(one.dot(other)) > kOff * one.norm() * other.norm())
    return std::nullopt;
  const bool along_one = one.norm() >= other.norm();
  const Vec2 a = along_one ? Vec2(0.5 * (c[3] + c[0])) : Vec2(0.5 * (c[0] + c[1]));
  const Vec2 b = along_one ? Vec2(0.5 * (c[1] + c[2])) : Vec2(0.5 * (c[2] + c[3]));
  return InsetLine{{a, b}, Length(shorter)};
}

std::optional<DrawnCircle> as_circle(const DrawnPath& path) {
  if (!path.closed || path.points_m.size() < kFewestOnCircle) return std::nullopt;
  const Vec2 centre = centroid_m(path.points_m);
  double mean = 0.0;
  for (const Vec2& p : path.points_m) mean += (p - centre).norm() / static_cast<double>(path.points_m.size());
  for (const Vec2& p : path.points_m)
    if (std::abs((p - centre).norm() - mean) > kOff * mean) return std::nullopt;
  return DrawnCircle{centre, mean};
}

bool lies_in_another(const DrawnShape& shape, const DrawnPath& path) {
  return std::any_of(shape.paths.begin(), shape.paths.end(),
                     [&](const DrawnPath& other) { return is_round(other, path); });
}

bool is_hole(const DrawnShape& shape, const DrawnPath& path) {
  const auto turn = [](const DrawnPath& one) { return one.swept_m2 > 0.0 ? 1 : -1; };
  int round = 0, winding = 0;  // of what lies round the path
  for (const DrawnPath& other : shape.paths)
    if (is_round(other, path)) ++round, winding += turn(other);
  return shape.fill_rule == FillRule::kEvenOdd ? round % 2 == 1 : winding != 0 && winding + turn(path) == 0;
}

Vec2 middle_m(const DrawnShape& shape) {
  if (shape.circle) return shape.circle->centre_m;
  const DrawnPath& path = shape.paths.front();
  return path.closed ? centroid_m(path.points_m) : halfway_m(path.points_m);
}

}  // namespace wrapgauge
