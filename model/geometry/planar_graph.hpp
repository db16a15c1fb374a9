#pragma once
// Straight lines in the plane that meet only at shared points.

#include <array>
#include <utility>
#include <vector>

#include "model/geometry/polygon.hpp"

namespace wrapgauge {

using Segment = std::array<int, 2>;  // indices of its two points

struct PlanarGraph {
  std::vector<Vec2> points_m;
  std::vector<Segment> segments;
};

// Splits lines where they cross or touch. Points closer than the tolerance become one, and a line that passes
// a point closer than the tolerance goes through it, so lines drawn on one another are one line.
PlanarGraph noded_graph(const std::vector<std::pair<Vec2, Vec2>>& lines, double tolerance_m);

}  // namespace wrapgauge
