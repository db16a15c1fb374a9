#include "model/body/axis_angle.hpp"

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

namespace wrapgauge {

Vec3 zero_angle_direction(const Vec3& axis) {
  const Vec3 start = std::abs(axis.x()) < 0.99 ? Vec3::UnitX() : Vec3::UnitY();
  return (start - start.dot(axis) * axis).normalized();
}

double angle_about_deg(const Vec3& axis, const Vec3& offset) {
  const Vec3 zero = zero_angle_direction(axis);
  const double angle = std::atan2(offset.dot(axis.cross(zero)), offset.dot(zero));
  return angle < 0.0 ? angle * 180.0 / std::numbers::pi + 360.0 : angle * 180.0 / std::numbers::pi;
}

}  // namespace wrapgauge
