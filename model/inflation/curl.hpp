#pragma once
// The rest curvature of a fused stack whose sheets were stretched differently when they were fused: it curls
// towards the sheet that was stretched more. Small strain, as in Timoshenko 1925, "Analysis of bi-metal
// thermostats": with the heights z_k of the sheets' middles over the neutral surface, free strains e_k =
// -ln(prestretch_k) along x,
//   kappa = sum E t z e / sum E (t^3/12 + t z^2).
//
// In a hinge 1/2 c |v - b n|^2, v the weighted sum of its nodes, b its value on the curled rest shape and n
// the normal, v.n is taken from the volume of the hinge's tetrahedron: the cubic term of Garg et al. 2007,
// "Cubic shells". The energy is then -moment x six volumes, besides the hinge's own.

#include <array>
#include <vector>

#include "model/inflation/bending.hpp"

namespace wrapgauge {

struct Curl {
  std::array<int, 4> nodes;
  double moment_n_per_m2 = 0.0;
};

// Height over the layout is 1/2 kappa x^2 when nothing holds the stack: > 0 curls away from the body.
double natural_curvature_per_m(const SheetElement& element);

// One for every hinge whose triangles want to curl.
std::vector<Curl> curls(const FlatMesh& flat, const SheetMesh& sheet,
                        const std::vector<SheetElement>& elements, const std::vector<Hinge>& hinges);

// Six times the volume of the tetrahedron (x1-x0) . ((x2-x0) x (x3-x0)), its gradient, and its second
// derivative.
double six_volumes(const std::array<Vec3, 4>& x);
Vec3 six_volumes_gradient(const std::array<Vec3, 4>& x, int node);
Mat3 six_volumes_hessian(const std::array<Vec3, 4>& x, int row_node, int column_node);

}  // namespace wrapgauge
