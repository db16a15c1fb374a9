#include "model/io/readers/path_trace.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wrapgauge {
namespace {

constexpr double kFineTolerance = 1e-7;  // m: areas of curves to about 1e-5 of themselves
constexpr int kMostChords = 4096;
constexpr double kFarthest = 100.0;  // m from the origin

int bounded(double chords) {
  return std::isfinite(chords) ? static_cast<int>(std::clamp(std::ceil(chords), 1.0, double{kMostChords}))
                               : 1;
}

// A whole number of quarter turns is divided so that every quarter ends on a point: bounds are then the
// curve's.
int with_quarters(int chords, double angle) {
  const double quarters = std::round(std::abs(angle) / (0.5 * std::numbers::pi));
  if (!(quarters >= 1.0 && quarters <= 4.0) ||  // an angle that is no number too
      std::abs(std::abs(angle) - 0.5 * std::numbers::pi * quarters) > 1e-9)
    return std::max(2, chords);
  const int k = static_cast<int>(quarters);
  return k * ((chords + k - 1) / k);
}

}  // namespace

const char* const kUnusableNumbers = "has a coordinate that is not a number or lies more than 100 m away";

int arc_chords(double radius_m, double angle, double tolerance_m) {
  const double most =
      tolerance_m >= radius_m ? std::numbers::pi / 2.0 : 2.0 * std::acos(1.0 - tolerance_m / radius_m);
  return bounded(std::abs(angle) / most);
}

int bezier_chords(const std::vector<Vec2>& control_m, double tolerance_m) {
  const auto degree = static_cast<double>(control_m.size()) - 1.0;
  double bend = 0.0;
  for (std::size_t i = 2; i < control_m.size(); ++i)
    bend = std::max(bend, (control_m[i] - 2.0 * control_m[i - 1] + control_m[i - 2]).norm());
  return bounded(std::sqrt(degree * (degree - 1.0) * bend / (8.0 * tolerance_m)));
}

PathTrace::PathTrace(const Vec2& start_m) {
  path_.points_m.push_back(start_m);
}

void PathTrace::sweep(const Vec2& from, const Vec2& to) {
  path_.swept_m2 += 0.5 * (from.x() * to.y() - from.y() * to.x());
  path_.length_m += (to - from).norm();
}

void PathTrace::line_to(const Vec2& point_m) {
  if (point_m == end_m()) return;
  sweep(end_m(), point_m);
  path_.points_m.push_back(point_m);
}

void PathTrace::curve_to(const CurvePoint& point, int coarse, int fine) {
  Vec2 last = end_m();
  for (int i = 1; i <= fine; ++i) {
    const Vec2 next = point(static_cast<double>(i) / fine);
    sweep(last, next);
    last = next;
  }
  for (int i = 1; i <= coarse; ++i)
    if (const Vec2 next = point(static_cast<double>(i) / coarse); next != end_m())
      path_.points_m.push_back(next);
}

void PathTrace::arc_to(const CurvePoint& point, double largest_radius_m, double angle) {
  const auto chords = [&](double tolerance) {
    return with_quarters(arc_chords(largest_radius_m, angle, tolerance), angle);
  };
  curve_to(point, chords(kFlatteningTolerance), chords(kFineTolerance));
}

void PathTrace::bezier_to(const CurvePoint& point, const std::vector<Vec2>& control_m) {
  curve_to(point, bezier_chords(control_m, kFlatteningTolerance), bezier_chords(control_m, kFineTolerance));
}

DrawnPath PathTrace::finish(bool closed, double tolerance_m) {
  const bool meets = path_.points_m.size() > 3 && (end_m() - path_.points_m.front()).norm() <= tolerance_m;
  if (closed || meets) {
    sweep(end_m(), path_.points_m.front());
    const bool repeats = path_.points_m.size() > 1 && end_m() == path_.points_m.front();
    if (meets || repeats) path_.points_m.pop_back();
    path_.closed = path_.points_m.size() >= 3;
  }
  return path_;
}

DrawnPath reversed(DrawnPath path) {
  std::reverse(path.points_m.begin(), path.points_m.end());
  path.swept_m2 = -path.swept_m2;
  return path;
}

void use_exact_circle(DrawnShape& shape) {
  if (!shape.circle || shape.paths.size() != 1) return;
  const double radius = shape.circle->radius_m;
  DrawnPath& path = shape.paths[0];
  path.swept_m2 = std::copysign(std::numbers::pi * radius * radius, path.swept_m2);
  path.length_m = 2.0 * std::numbers::pi * radius;
}

bool usable(const DrawnPath& path) {
  return !path.points_m.empty() && std::isfinite(path.swept_m2) && std::isfinite(path.length_m) &&
         std::all_of(path.points_m.begin(), path.points_m.end(),
                     [](const Vec2& p) { return p.allFinite() && p.cwiseAbs().maxCoeff() <= kFarthest; });
}

}  // namespace wrapgauge
