#pragma once
// Hyperelastic membrane on one constant-strain triangle: energy, gradient and Hessian in the 3x2 deformation
// gradient F = [f1 f2], from its principal stretches.
//
// dP/dF has five kinds of modes: the 2x2 block of the stretches, twist (W1+W2)/(l1+l2), flip (W1-W2)/(l1-l2),
// and out of plane W_i/l_i. Exact, projected to be positive semi-definite, and relaxed (no compression)
// versions share them.

#include "model/core/array.hpp"
#include "model/material/hyperelastic.hpp"

namespace wrapgauge {

using Mat32 = Eigen::Matrix<double, 3, 2>;
using Mat66 = Eigen::Matrix<double, 6, 6>;

// Energy a unit of rest volume, first Piola-Kirchhoff stress (Pa) and, if asked, dP/dF on (f1; f2).
struct MembraneResponse {
  double energy = 0.0;
  Mat32 stress = Mat32::Zero();
  Mat66 tangent = Mat66::Zero();
};

enum class TangentKind { kNone, kExact, kProjected };

struct MembraneOptions {
  TangentKind tangent = TangentKind::kExact;
  // Tension field: a sheet that would be compressed wrinkles and carries nothing across the wrinkles. Two
  // stretches below 1 store nothing; a second stretch below l1^(-1/2) is replaced by that free width.
  bool relaxed_compression = false;
};

MembraneResponse membrane_response(const HyperelasticLaw& law, const Mat32& deformation_gradient,
                                   const MembraneOptions& options);

// Cloth: threads along rest directions 1 and 2 that only pull, energy a unit of rest area
// 1/2 s1 <E11>^2 + 1/2 s2 <E22>^2 with Green strain E and stiffness s in N/m. Stress in N/m. Always convex
// here.
MembraneResponse cloth_response(double along_n_per_m, double across_n_per_m,
                                const Mat32& deformation_gradient, bool with_tangent);

// Principal stretches, largest first.
Vec2 principal_stretches(const Mat32& deformation_gradient);

}  // namespace wrapgauge
