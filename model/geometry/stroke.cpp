#include "model/geometry/stroke.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wrapgauge {
namespace {

constexpr double kPi = std::numbers::pi;

Vec2 left_of(const Vec2& direction) {
  return {-direction.y(), direction.x()};
}

// Chords of a circle of this radius stay within the tolerance when each spans at most this angle.
double chord_angle(double radius, double tolerance) {
  return tolerance >= radius ? kPi / 2.0 : 2.0 * std::acos(1.0 - tolerance / radius);
}

// Points of one side of the path, at `offset` to its left.
std::vector<Vec2> offset_side(const Polyline& path, double offset) {
  std::vector<Vec2> side;
  for (std::size_t i = 0; i < path.size(); ++i) {
    const bool first = i == 0, last = i + 1 == path.size();
    const Vec2 in = first ? Vec2(path[1] - path[0]).normalized() : Vec2(path[i] - path[i - 1]).normalized();
    const Vec2 out = last ? in : Vec2(path[i + 1] - path[i]).normalized();
    const double cosine = in.dot(out);
    if (cosine > -0.5) {  // mitre: both offset lines pass through this point
      side.push_back(path[i] + offset / (1.0 + cosine) * (left_of(in) + left_of(out)));
    } else {
      side.push_back(path[i] + offset * left_of(in));
      side.push_back(path[i] + offset * left_of(out));
    }
  }
  return side;
}

}  // namespace

Polygon stroke(const Polyline& path, double width_m) {
  Polyline clean = path;
  clean.erase(std::unique(clean.begin(), clean.end()), clean.end());
  if (clean.size() < 2 || !(width_m > 0.0)) return {};
  Polygon loop = offset_side(clean, -0.5 * width_m);
  const std::vector<Vec2> left = offset_side(clean, 0.5 * width_m);
  loop.insert(loop.end(), left.rbegin(), left.rend());
  return loop;
}

Polygon circle_polygon(const Vec2& centre, double radius_m, double longest_side_m) {
  int sides = 12;
  while (2.0 * kPi * radius_m / sides > longest_side_m && sides < 4096) sides += 4;
  const double step = 2.0 * kPi / sides;
  const double corner_radius = radius_m * std::sqrt(step / std::sin(step));
  Polygon loop;
  for (int i = 0; i < sides; ++i)
    loop.push_back(centre + corner_radius * Vec2(std::cos(i * step), std::sin(i * step)));
  return loop;
}

Polygon flattened_ellipse(const Vec2& centre, const Vec2& radii, double tolerance_m) {
  const double angle = chord_angle(radii.maxCoeff(), tolerance_m);
  const int sides = 4 * std::max(3, static_cast<int>(std::ceil(0.5 * kPi / angle)));
  Polygon loop;
  for (int i = 0; i < sides; ++i) {
    const double t = 2.0 * kPi * i / sides;
    loop.push_back(centre + Vec2(radii.x() * std::cos(t), radii.y() * std::sin(t)));
  }
  return loop;
}

Polygon flattened_rectangle(const Vec2& low, const Vec2& size, double corner_radius_m, double tolerance_m) {
  const Vec2 high = low + size;
  if (!(corner_radius_m > 0.0)) return {low, {high.x(), low.y()}, high, {low.x(), high.y()}};
  const int chords =
      std::max(2, static_cast<int>(std::ceil(0.5 * kPi / chord_angle(corner_radius_m, tolerance_m))));
  const double r = corner_radius_m;
  const Vec2 centres[4] = {{high.x() - r, low.y() + r},
                           {high.x() - r, high.y() - r},
                           {low.x() + r, high.y() - r},
                           {low.x() + r, low.y() + r}};
  Polygon loop;
  for (int corner = 0; corner < 4; ++corner)
    for (int i = 0; i <= chords; ++i) {
      const double t = 0.5 * kPi * (corner - 1 + static_cast<double>(i) / chords);
      const Vec2 p = centres[corner] + r * Vec2(std::cos(t), std::sin(t));
      // Half as wide as high gives arcs that meet: their shared point is kept once.
      if (loop.empty() || (p - loop.back()).norm() > 1e-9) loop.push_back(p);
    }
  if ((loop.front() - loop.back()).norm() <= 1e-9) loop.pop_back();
  return loop;
}

}  // namespace wrapgauge
