#pragma once
// Triangles of the plane that keep given lines as edges.

#include "model/geometry/planar_graph.hpp"

namespace wrapgauge {

struct PlanarTriangulation {
  std::vector<Vec2> points_m;                 // the graph's points first, in their order
  std::vector<std::array<int, 3>> triangles;  // counter-clockwise; they cover the convex hull
  std::vector<Segment> lines;  // the graph\'s segments as edges, split where points lie on them; sorted
};

// Constrained Delaunay triangulation of a graph's points that keeps its segments.
PlanarTriangulation constrained_delaunay(const PlanarGraph& graph);

// The same, with points added (also on lines) until no triangle that the lines enclose has an angle below
// about 20.7 degrees, except beside sharper corners of the lines themselves. Delaunay refinement after
// Ruppert 1995, J. Algorithms 18, 548-585, and Shewchuk 2002, Comput. Geom. 22, 21-74 (citations from
// memory).
PlanarTriangulation refined_delaunay(const PlanarGraph& graph);

double smallest_angle_deg(const Vec2& a, const Vec2& b, const Vec2& c);

}  // namespace wrapgauge
