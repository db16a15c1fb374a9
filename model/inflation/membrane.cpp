#include "model/inflation/membrane.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

namespace wrapgauge {
namespace {

using Vec6 = Eigen::Matrix<double, 6, 1>;

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
  const double angle = 0.5 * std::atan2(2.0 * c12, c11 - c22);
  StretchFrame frame;
  frame.v1 = Vec2(std::cos(angle), std::sin(angle));
  frame.v2 = Vec2(-frame.v1.y(), frame.v1.x());
  const Vec3 a = f * frame.v1, b = f * frame.v2;
  frame.l1 = std::max(a.norm(), kSmallestStretch);
  frame.u1 = a / frame.l1;
  const Vec3 across = b - b.dot(frame.u1) * frame.u1;
  frame.l2 = std::max(across.norm(), kSmallestStretch);
  frame.u2 = across / frame.l2;
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

Vec6 stacked(const Vec3& u, const Vec2& v) {
  Vec6 mode;
  mode << v.x() * u, v.y() * u;
  return mode;
}

void add_mode(Mat66& tangent, double value, const Vec6& mode, bool projected) {
  if (projected && value <= 0.0) return;
  tangent.noalias() += value * mode * mode.transpose();
}

Eigen::Matrix2d positive_part(const Eigen::Matrix2d& block) {
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> eigen(block);
  return eigen.eigenvectors() * eigen.eigenvalues().cwiseMax(0.0).asDiagonal() *
         eigen.eigenvectors().transpose();
}

Mat66 tangent_of(const StretchFrame& s, const StretchEnergy& w, bool projected) {
  Mat66 tangent = Mat66::Zero();
  Eigen::Matrix2d block;
  block << w.w11, w.w12, w.w12, w.w22;
  if (projected) block = positive_part(block);
  Eigen::Matrix<double, 6, 2> stretches;
  stretches << stacked(s.u1, s.v1), stacked(s.u2, s.v2);
  tangent.noalias() += stretches * block * stretches.transpose();

  const Vec6 m12 = stacked(s.u1, s.v2), m21 = stacked(s.u2, s.v1);
  const double gap = s.l1 - s.l2;
  // Equal stretches: the quotient's limit.
  const double flip = gap > 1e-7 * s.l1 ? (w.w1 - w.w2) / gap : w.w11 - w.w12;
  add_mode(tangent, (w.w1 + w.w2) / (s.l1 + s.l2), (m12 - m21) * M_SQRT1_2, projected);
  add_mode(tangent, flip, (m12 + m21) * M_SQRT1_2, projected);
  add_mode(tangent, w.w1 / s.l1, stacked(s.normal, s.v1), projected);
  add_mode(tangent, w.w2 / s.l2, stacked(s.normal, s.v2), projected);
  return tangent;
}

}  // namespace

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

MembraneResponse cloth_response(double along_n_per_m, double across_n_per_m,
                                const Mat32& deformation_gradient, bool with_tangent) {
  MembraneResponse response;
  const double stiffness[2] = {along_n_per_m, across_n_per_m};
  for (int k = 0; k < 2; ++k) {
    const Vec3 thread = deformation_gradient.col(k);
    const double strain = 0.5 * (thread.squaredNorm() - 1.0);
    if (strain <= 0.0 || stiffness[k] <= 0.0) continue;
    response.energy += 0.5 * stiffness[k] * strain * strain;
    response.stress.col(k) += stiffness[k] * strain * thread;
    if (with_tangent)
      response.tangent.block<3, 3>(3 * k, 3 * k) +=
          stiffness[k] * (thread * thread.transpose() + strain * Mat3::Identity());
  }
  return response;
}

Vec2 principal_stretches(const Mat32& deformation_gradient) {
  const StretchFrame s = stretch_frame(deformation_gradient);
  return {s.l1, s.l2};
}

}  // namespace wrapgauge
