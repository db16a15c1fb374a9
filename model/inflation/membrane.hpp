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

// dP/dF in the frame of the principal stretches: u1, u2 and the normal in space, v1, v2 at rest.
struct MembraneTangent {
  Mat3 frame = Mat3::Zero();                             // u1, u2, normal
  Eigen::Matrix2d rest_frame = Eigen::Matrix2d::Zero();  // v1, v2
  double w11 = 0.0, w12 = 0.0, w22 = 0.0;
  double shear = 0.0, shear_cross = 0.0;  // F12 and F21: (flip + twist) / 2, (flip - twist) / 2
  double out1 = 0.0, out2 = 0.0;          // out of plane

  // Change of P a for a change of F by x b^T, as a matrix on x.
  Mat3 between(const Vec2& a, const Vec2& b) const;
};

// Energy a unit of rest volume, first Piola-Kirchhoff stress (Pa) and, if asked, dP/dF.
struct MembraneResponse {
  double energy = 0.0;
  Mat32 stress = Mat32::Zero();
  MembraneTangent tangent;
};

struct ClothTangent {
  Mat3 threads[2] = {Mat3::Zero(), Mat3::Zero()};
  Mat3 between(const Vec2& a, const Vec2& b) const {
    return a.x() * b.x() * threads[0] + a.y() * b.y() * threads[1];
  }
};

struct ClothResponse {
  double energy = 0.0;
  Mat32 stress = Mat32::Zero();
  ClothTangent tangent;
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
ClothResponse cloth_response(double along_n_per_m, double across_n_per_m, const Mat32& deformation_gradient,
                             bool with_tangent);

// Principal stretches, largest first.
Vec2 principal_stretches(const Mat32& deformation_gradient);

}  // namespace wrapgauge
