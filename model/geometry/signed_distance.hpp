#pragma once
#include "model/core/array.hpp"

namespace wrapgauge {

// Signed distance to a body surface at a point: > 0 outside, < 0 inside (tissue indented), with its
// first and second derivatives. Implementations are twice continuously differentiable where contact happens,
// because normals that jump cost the equilibrium solver 2.5 times the iterations.
struct DistanceSample {
  double distance_m = 0.0;
  Vec3 gradient = Vec3::Zero();  // about unit length, outward
  Mat3 hessian_per_m = Mat3::Zero();
};

// How the unit outward normal changes along a way.
inline Vec3 normal_change(const DistanceSample& at, const Vec3& way_m) {
  const double length = at.gradient.norm();
  const Vec3 normal = at.gradient / length, change = at.hessian_per_m * way_m / length;
  return change - change.dot(normal) * normal;
}

class SignedDistance {
 public:
  virtual ~SignedDistance() = default;
  virtual DistanceSample at(const Vec3& point_m) const = 0;
};

}  // namespace wrapgauge
