#pragma once
// Points inside a drawing, spaced by a size field so that their Delaunay triangles are nearly equilateral.

#include <functional>

#include "model/geometry/planar_triangulation.hpp"
#include "model/geometry/size_field.hpp"

namespace wrapgauge {

struct SampledGraph {
  PlanarGraph graph;                 // the points given come first
  std::vector<int> segment_of_part;  // of the graph given
};
// Splits each segment into parts of about the wanted length, and into at least `least_parts` (one a segment).
SampledGraph sampled_graph(const PlanarGraph& graph, const std::vector<int>& least_parts,
                           const std::function<double(const Vec2&)>& size);

// Adds free points to the graph (after its own), a front of equilateral triangles growing from every segment,
// where `inside` holds. Same input, same points.
void fill_with_points(PlanarGraph& graph, const SizeField& size,
                      const std::function<bool(const Vec2&)>& inside);

// Moves points that no line ends at to the area-weighted middle of the triangles round them, triangulating
// anew each round; a move that would turn a triangle over is not made.
void smooth_free_points(PlanarGraph& graph, const SizeField& size, int rounds);

}  // namespace wrapgauge
