#pragma once
// Follows a drawn path piece by piece and keeps its chords, its length and the area it sweeps.

#include <functional>

#include "model/layout/drawing.hpp"

namespace wrapgauge {

// No chord is farther from the drawn curve than this.
inline constexpr double kFlatteningTolerance = 5e-5;  // m

// A shape with more points is refused: a layout holds 20 000 in all.
inline constexpr std::size_t kMostShapePoints = 10000;

// Chords of an arc that keep within the tolerance: each spans at most 2 acos(1 - tolerance / radius).
int arc_chords(double radius_m, double angle, double tolerance_m);
// Chords, evenly spaced in the parameter, of a Bezier curve of degree n = points - 1:
// sqrt(n (n - 1) max |second difference of the points| / (8 tolerance)), since a chord of a curve with second
// derivative M is at most M h^2 / 8 from it.
int bezier_chords(const std::vector<Vec2>& control_m, double tolerance_m);

using CurvePoint = std::function<Vec2(double)>;  // parameter 0 to 1 -> metres

class PathTrace {
 public:
  explicit PathTrace(const Vec2& start_m);
  void line_to(const Vec2& point_m);
  // Chords of the path: `coarse`; length and area are followed in `fine` steps.
  void curve_to(const CurvePoint& point, int coarse, int fine);
  void arc_to(const CurvePoint& point, double largest_radius_m, double angle);
  void bezier_to(const CurvePoint& point, const std::vector<Vec2>& control_m);

  const Vec2& end_m() const { return path_.points_m.back(); }
  std::size_t size() const { return path_.points_m.size(); }
  // A path that comes back to within `tolerance_m` of its start is closed.
  DrawnPath finish(bool closed, double tolerance_m = 1e-6);

 private:
  void sweep(const Vec2& from, const Vec2& to);
  DrawnPath path_;
};

// The same path the other way round.
DrawnPath reversed(DrawnPath path);

// Area and perimeter of a shape that is a circle, without the error of following it in steps.
void use_exact_circle(DrawnShape& shape);

// Numbers that nothing worn can have; readers refuse the shape.
bool usable(const DrawnPath& path);
extern const char* const kUnusableNumbers;

}  // namespace wrapgauge
