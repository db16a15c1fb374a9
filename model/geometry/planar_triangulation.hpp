#pragma once
// Triangles of the plane that keep given lines as edges.

#include <optional>

#include "model/geometry/planar_graph.hpp"

namespace wrapgauge {

// A piece of a line of the graph that is one edge of the triangulation.
struct LinePiece {
  Segment ends;           // the smaller index first
  int segment = 0;        // of the graph
  bool reversed = false;  // runs against its segment
};

struct PlanarTriangulation {
  using ThreeOrNone = std::array<std::optional<int>, 3>;
  std::vector<Vec2> points_m;                 // the graph's points first, in their order
  std::vector<std::array<int, 3>> triangles;  // counter-clockwise; they cover the convex hull
  // Of each triangle's edge from corner k to the next: the triangle across it (none: the hull), and the line
  // on it, as an index into `lines` (none: no line).
  std::vector<ThreeOrNone> across, line_on;
  std::vector<LinePiece> lines;  // sorted by their ends; each segment is a chain of them
};

// Constrained Delaunay triangulation of a graph's points that keeps its segments.
PlanarTriangulation constrained_delaunay(const PlanarGraph& graph);

// The same, with points added (also on lines) until no triangle that the lines enclose has an angle below
// about 20.7 degrees, except beside sharper corners of the lines themselves. Delaunay refinement after
// Ruppert 1995, J. Algorithms 18, 548-585, and Shewchuk 2002, Comput. Geom. 22, 21-74 (citations from
// memory).
PlanarTriangulation refined_delaunay(const PlanarGraph& graph);

// The triangle that holds the point, found by walking from triangle `start`; none outside the hull.
std::optional<int> triangle_at(const PlanarTriangulation& mesh, const Vec2& point, int start = 0);

double smallest_angle_deg(const Vec2& a, const Vec2& b, const Vec2& c);

}  // namespace wrapgauge
