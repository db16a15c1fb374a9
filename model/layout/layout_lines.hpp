#pragma once
// The layout's lines: one planar graph, read off the drawing once, whose lines know what lies on their two
// sides. The flat mesh is made from it step by step, and every step hands the sides on.

#include <array>
#include <optional>
#include <vector>

#include "model/geometry/planar_triangulation.hpp"
#include "model/layout/closing_window.hpp"

namespace wrapgauge {

// What lies left and right of a line, seen from its first point to its second; none: outside the layout.
using RegionSides = std::array<std::optional<FlatRegion>, 2>;
bool same_pair(const RegionSides& a, const RegionSides& b);  // in either order

struct LayoutLines {
  PlanarGraph graph;
  std::vector<RegionSides> sides;  // of each segment; the two differ
};

// The drawing's lines, split where they meet, without those that part nothing; within the window if there is
// one, its two lines among them.
LayoutLines layout_lines(const LayoutShapes& shapes, const std::optional<ClosingWindow>& window);

// Lines triangulated: a triangle's region is that of the lines round it.
struct RegionMesh {
  PlanarTriangulation mesh;
  std::vector<std::optional<FlatRegion>> regions;  // one a triangle; none: outside the layout

  bool is_open_at(const std::optional<int>& triangle) const;  // a chamber or channel
};
// `mesh` is a triangulation of a graph whose segments have these sides.
RegionMesh with_regions(PlanarTriangulation mesh, const std::vector<RegionSides>& sides);
// The pieces of lines that are edges of the triangulation, each a line of its own from here on.
LayoutLines pieces_as_lines(PlanarTriangulation& mesh, const std::vector<RegionSides>& sides);

}  // namespace wrapgauge
