#include "model/inflation/membrane.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

namespace wrapgauge {
namespace {

// F = l1 u1 v1^T + l2 u2 v2^T, l1 >= l2.
struct StretchFrame {
  double l1, l2;
  Vec2 v1, v2;
  Vec3 u1, u2, normal;
};

// A triangle crushed to nothing still needs a direction; below this stretch the answer is refused elsewhere.
constexpr double kSmallestStretch = 1e-6;

StretchFrame stretch_frame(const Mat32& f) {
  const double c11 = f.col(0).squaredNorm(), c22 = f.col(1).squaredNorm(), c12 = f.col(0).dot(f.col(1));
  // Half the angle of (c11 - c22, 2 c12), without its sine and cosine.
  const double along = c11 - c22, across = 2.0 * c12, length = std::sqrt(along * along + across * across);
  StretchFrame frame;
  frame.v1 = along >= 0.0 ? Vec2(length + along, across)
                          : Vec2(std::abs(across), std::copysign(length - along, across));
  frame.v1 = length > 0.0 ? Vec2(frame.v1.normalized()) : Vec2(1.0, 0.0);
  frame.v2 = Vec2(-frame.v1.y(), frame.v1.x());
  const Vec3 a = f * frame.v1, b = f * frame.v2;
  frame.l1 = std::max(a.norm(), kSmallestStretch);
  frame.u1 = (1.0 / frame.l1) * a;
  const Vec3 sideways = b - b.dot(frame.u1) * frame.u1;
  frame.l2 = std::max(sideways.norm(), kSmallestStretch);
  frame.u2 = (1.0 / frame.l2) * sideways;
  frame.normal = frame.u1.cross(frame.u2);
  return frame;
}

// Tension field: the relaxed energy and its derivatives.
StretchEnergy relaxed_energy(const HyperelasticLaw& law, double l1, double l2) {
  if (l1 <= 1.0) return {};
  const double free_width = 1.0 / std::sqrt(l1);
  if (l2 >= free_width) return stretch_energy(law, l1, l2);
  const StretchEnergy at = stretch_energy(law, l1, free_width);
  const double slope = -0.5 * free_width / l1;
  StretchEnergy relaxed;
  relaxed.w = at.w;
  relaxed.w1 = at.w1;  // w2 = 0 at the free width
  relaxed.w11 = at.w11 + 2.0 * slope * at.w12 + slope * slope * at.w22;
  return relaxed;
}

Eigen::Matrix2d positive_part(const Eigen::Matrix2d& block) {
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> eigen(block);
  return eigen.eigenvectors() * eigen.eigenvalues().cwiseMax(0.0).asDiagonal() *
         eigen.eigenvectors().transpose();
}

MembraneTangent tangent_of(const StretchFrame& s, const StretchEnergy& w, bool projected) {
  const auto kept = [&](double stiffness) { return projected ? std::max(0.0, stiffness) : stiffness; };
  MembraneTangent tangent;
  tangent.frame << s.u1, s.u2, s.normal;
  tangent.rest_frame << s.v1, s.v2;
  Eigen::Matrix2d block;
  block << w.w11, w.w12, w.w12, w.w22;
  if (projected) block = positive_part(block);
  tangent.w11 = block(0, 0);
  tangent.w12 = block(1, 0);
  tangent.w22 = block(1, 1);
  const double gap = s.l1 - s.l2;
  // Equal stretches: the quotient's limit.
  const double flip = kept(gap > 1e-7 * s.l1 ? (w.w1 - w.w2) / gap : w.w11 - w.w12);
  const double twist = kept((w.w1 + w.w2) / (s.l1 + s.l2));
  tangent.shear = 0.5 * (flip + twist);
  tangent.shear_cross = 0.5 * (flip - twist);
  tangent.out1 = kept(w.w1 / s.l1);
  tangent.out2 = kept(w.w2 / s.l2);
  return tangent;
}

}  // namespace

Mat3 MembraneTangent::between(const Vec2& a, const Vec2& b) const {
  const Vec2 p = rest_frame.transpose() * a, q = rest_frame.transpose() * b;
  const double p1q1 = p.x() * q.x(), p1q2 = p.x() * q.y(), p2q1 = p.y() * q.x(), p2q2 = p.y() * q.y();
  Eigen::Matrix2d in_plane;
  in_plane << w11 * p1q1 + shear * p2q2, w12 * p1q2 + shear_cross * p2q1,  //
      w12 * p2q1 + shear_cross * p1q2, w22 * p2q2 + shear * p1q1;
  const auto plane = frame.leftCols<2>();
  const Vec3 normal = frame.col(2);
  return plane * in_plane * plane.transpose() + ((out1 * p1q1 + out2 * p2q2) * normal) * normal.transpose();
}

MembraneResponse membrane_response(const HyperelasticLaw& law, const Mat32& deformation_gradient,
                                   const MembraneOptions& options) {
  const StretchFrame s = stretch_frame(deformation_gradient);
  const StretchEnergy w =
      options.relaxed_compression ? relaxed_energy(law, s.l1, s.l2) : stretch_energy(law, s.l1, s.l2);
  MembraneResponse response;
  response.energy = w.w;
  response.stress = w.w1 * s.u1 * s.v1.transpose() + w.w2 * s.u2 * s.v2.transpose();
  if (options.tangent != TangentKind::kNone)
    response.tangent = tangent_of(s, w, options.tangent == TangentKind::kProjected);
  return response;
}

ClothResponse cloth_response(double along_n_per_m, double across_n_per_m, const Mat32& deformation_gradient,
                             bool with_tangent) {
  ClothResponse response;
  const double stiffness[2] = {along_n_per_m, across_n_per_m};
  for (int k = 0; k < 2; ++k) {
    const Vec3 thread = deformation_gradient.col(k);
    const double strain = 0.5 * (thread.squaredNorm() - 1.0);
    if (strain <= 0.0 || stiffness[k] <= 0.0) continue;
    response.energy += 0.5 * stiffness[k] * strain * strain;
    response.stress.col(k) += stiffness[k] * strain * thread;
    if (with_tangent)
      response.tangent.threads[k] = stiffness[k] * (thread * thread.transpose() + strain * Mat3::Identity());
  }
  return response;
}

Vec2 principal_stretches(const Mat32& deformation_gradient) {
  const StretchFrame s = stretch_frame(deformation_gradient);
  return {s.l1, s.l2};
}

}  // namespace wrapgauge
