#pragma once
// Bending as quadratic isometric hinges: E = 1/2 c |sum_a k_a x_a|^2 over the four nodes of each pair of
// triangles that share an edge, with c = 1 / (A1/D1 + A2/D2) (the two plates in series) and the cotangent
// weights of the flat rest shape. The Hessian is constant and positive semi-definite. Quadratic bending on a
// flat rest shape: Bergou et al. 2006, "A quadratic bending model for inextensible surfaces".

#include <array>
#include <vector>

#include "model/inflation/sheet_elements.hpp"

namespace wrapgauge {

struct Hinge {
  std::array<int, 4> nodes;      // edge start, edge end, opposite corner of triangle 1, of triangle 2
  std::array<int, 2> triangles;  // of the sheet
  Eigen::Vector4d weights;       // k_a, 1/m * m: dimensionless cotangents
  double stiffness = 0.0;        // c, N/m
};

// Every pair of triangles across an edge that bend together: skin with skin, outer with outer, and a fused or
// strap triangle with each sheet it continues into.
std::vector<Hinge> bending_hinges(const FlatMesh& flat, const SheetMesh& sheet,
                                  const std::vector<SheetElement>& elements);

}  // namespace wrapgauge
