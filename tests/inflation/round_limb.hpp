#pragma once
// Shapes that several mechanics tests share.

#include <Eigen/Core>

#include "model/geometry/polygon.hpp"
#include "model/geometry/signed_distance.hpp"

namespace wrapgauge::small {

inline Polygon rectangle(double x0, double y0, double x1, double y1) {
  return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}

// Tissue of a round limb about the z axis.
class RoundLimb : public SignedDistance {
 public:
  explicit RoundLimb(double radius_m) : radius_m_(radius_m) {}
  DistanceSample at(const Vec3& point_m) const override {
    const Vec3 radial(point_m.x(), point_m.y(), 0.0);
    const double r = radial.norm();
    const Vec3 normal = radial / r;
    Mat3 flat = Mat3::Identity();
    flat(2, 2) = 0.0;
    return {r - radius_m_, normal, (flat - normal * normal.transpose()) / r};
  }

 private:
  double radius_m_;
};

}  // namespace wrapgauge::small
