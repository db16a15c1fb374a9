#pragma once
// Where a dragged part comes to rest: in line with another part's edge or middle if one is near, else on a
// grid.

#include <optional>
#include <vector>

#include "model/core/array.hpp"
#include "model/geometry/polygon.hpp"

namespace wrapgauge {

struct Snapped {
  Vec2 by_m = Vec2::Zero();
  std::optional<double> line_x_m, line_y_m;  // what it is in line with
};

// `moved`: bounds of the part before the move; `others`: of the parts it may line up with. `reach_m`: how
// near counts; `grid_m`: of the move itself.
Snapped snapped_move(const Bounds2& moved, const std::vector<Bounds2>& others, const Vec2& by_m,
                     double reach_m, double grid_m);

}  // namespace wrapgauge
