#include "model/layout/snapping.hpp"

#include <array>
#include <cmath>

namespace wrapgauge {
namespace {

struct AxisSnap {
  double by_m = 0.0;
  std::optional<double> line_m;
};

std::array<double, 3> marks_of(const Bounds2& box, int axis) {
  return {box.low[axis], 0.5 * (box.low[axis] + box.high[axis]), box.high[axis]};
}

AxisSnap snap_axis(const Bounds2& moved, const std::vector<Bounds2>& others, double by_m, int axis,
                   double reach_m, double grid_m) {
  AxisSnap best{grid_m > 0.0 ? grid_m * std::round(by_m / grid_m) : by_m, std::nullopt};
  double nearest = reach_m;
  for (const Bounds2& other : others)
    for (const double mark : marks_of(moved, axis))
      for (const double line : marks_of(other, axis)) {
        const double needed = line - mark;
        if (std::abs(needed - by_m) >= nearest) continue;
        nearest = std::abs(needed - by_m);
        best = {needed, line};
      }
  return best;
}

}  // namespace

Snapped snapped_move(const Bounds2& moved, const std::vector<Bounds2>& others, const Vec2& by_m,
                     double reach_m, double grid_m) {
  const AxisSnap x = snap_axis(moved, others, by_m.x(), 0, reach_m, grid_m);
  const AxisSnap y = snap_axis(moved, others, by_m.y(), 1, reach_m, grid_m);
  return {{x.by_m, y.by_m}, x.line_m, y.line_m};
}

}  // namespace wrapgauge
