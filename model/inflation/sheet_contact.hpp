#pragma once
// The two sheets of an open region lie on each other where the chamber is not blown up: node pairs that come
// from the same flat point, E = 1/2 k A <g>^2 where g = n . (outer - skin) < 0. n is the body's (or the
// layout's) outward normal; it is held during a step and follows the shape after it.

#include <vector>

#include "model/inflation/block_matrix.hpp"
#include "model/inflation/load_path.hpp"

namespace wrapgauge {

struct SheetPair {
  Stencil<2> stencil;  // skin node, outer node
  double stiffness_n_per_m = 0.0;
  Vec3 normal = Vec3::UnitZ();
};

// Stiffness: the softer sheet squeezed through its thickness, 3 mu / h.
std::vector<SheetPair> sheet_pairs(const InflationSetup& setup, const SheetMesh& sheet);

}  // namespace wrapgauge
