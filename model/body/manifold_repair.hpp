#pragma once
// Steps that make an edge belong to at most two faces, faces agree on their outside, and a vertex one fan.

#include <optional>

#include "model/body/edge_table.hpp"
#include "model/body/union_find.hpp"
#include "model/core/array.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// Cuts off small patches of faces (at most 1 % of all, or 4) that hang on edges with two other faces; returns
// how many faces went. Problem: an edge of more than two faces is left.
Result<int> cut_fins(const Points3& vertices, Triangles& faces);

struct PieceChoice {
  int pieces = 1;
  int faces_left_out = 0;
  double share_of_area = 1.0;  // of the piece that was kept
  double next_share = 0.0;     // of the largest that was left out
};

// Keeps the piece (faces joined by edges) of the largest area.
PieceChoice keep_largest_piece(const Points3& vertices, Triangles& faces);

// Corners (3 * face + k) that edges join round the same vertex; `edges` are those of `faces`.
UnionFind vertex_fans(const Triangles& faces, const EdgeTable& edges);

// Gives a vertex that several separate fans of faces share a copy a fan; returns how many copies were made.
int split_touching_vertices(Points3& vertices, Triangles& faces);

// Turns faces so that neighbours agree and normals point outward: the volume within the surface, closed over
// its open ends, is positive. Returns how many were turned; none: the surface has only one side.
std::optional<int> turn_outward(const Points3& vertices, Triangles& faces);

}  // namespace wrapgauge
