#include "app/picture/limb_view.hpp"

#include <Eigen/Geometry>
#include <algorithm>

namespace wrapgauge {

Mat3 limb_view_rows(const Vec3& up, const Vec3& towards_eye) {
  Vec3 eye = towards_eye - towards_eye.dot(up) * up;
  if (eye.norm() < 1e-6) eye = up.unitOrthogonal();
  eye.normalize();
  Mat3 rows;
  rows.row(0) = up.cross(eye);
  rows.row(1) = up;
  rows.row(2) = eye;
  return rows;
}

double shade_of(const Vec3& seen_normal) {
  const Vec3 light = Vec3(-0.35, 0.35, 0.87).normalized();
  return 0.62 + 0.38 * std::max(0.0, seen_normal.dot(light));
}

}  // namespace wrapgauge
