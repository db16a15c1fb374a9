#pragma once
// Which part of the layout each triangle of a triangulated drawing belongs to.

#include <cmath>

#include "model/geometry/planar_triangulation.hpp"
#include "model/layout/layout_shapes.hpp"

namespace wrapgauge {

// The part of the plane that is meshed: between two lines across the layout when it closes. They slant apart
// by `slope` each; from_x and to_x hold at y = middle_y.
struct ClosingWindow {
  double from_x_m, to_x_m;
  double slope = 0.0, middle_y_m = 0.0;

  double from_at_m(double y_m) const { return from_x_m - slope * (y_m - middle_y_m); }
  double to_at_m(double y_m) const { return to_x_m + slope * (y_m - middle_y_m); }
  // How far a point lies before the first line or beyond the second; negative: it does not.
  double before_m(const Vec2& p) const { return from_at_m(p.y()) - p.x(); }
  double beyond_m(const Vec2& p) const { return p.x() - to_at_m(p.y()); }
  bool on_from(const Vec2& p) const { return std::abs(before_m(p)) <= kOnLine_m; }
  bool on_to(const Vec2& p) const { return std::abs(beyond_m(p)) <= kOnLine_m; }

 private:
  static constexpr double kOnLine_m = 1e-9;  // rounding; drawn points are kept 0.01 mm apart
};

// Gap below which drawn points and lines are one: finer than anything is cut or cast (judgement).
inline constexpr double kDrawingTolerance = 1e-5;

using RegionOfTriangle = std::vector<std::optional<FlatRegion>>;  // none: outside the layout

// Triangles not parted by a line share their region, which is read at the middle of the roundest of them.
RegionOfTriangle regions_of(const PlanarTriangulation& mesh, const LayoutShapes& shapes,
                            const std::optional<ClosingWindow>& window);

// The two triangles of each edge; the second is -1 on the hull. Ordered by the edge's points.
struct EdgeSides {
  Segment ends;
  int triangles[2];
};
std::vector<EdgeSides> edge_sides(const std::vector<std::array<int, 3>>& triangles);

// The regions on the two sides of a line, in either order.
using RegionSides = std::array<std::optional<FlatRegion>, 2>;
bool same_pair(const RegionSides& a, const RegionSides& b);

// The layout's lines, split where they meet, without those that part nothing.
struct LayoutLines {
  PlanarGraph graph;
  std::vector<RegionSides> sides;  // of each segment
};
LayoutLines layout_lines(const LayoutShapes& shapes, const std::optional<ClosingWindow>& window);

}  // namespace wrapgauge
