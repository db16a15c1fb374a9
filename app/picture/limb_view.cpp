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

void draw_skin(const TriangleMesh& skin, const Points3& normals, const LimbView& view, Raster& raster) {
  const auto vertex = [&](int v) {
    return RasterVertex{view.project(skin.vertices_m.row(v)),
                        shade_of(view.rows * normals.row(v).transpose()), 0.0, 0.0};
  };
  for (Eigen::Index f = 0; f < skin.faces.rows(); ++f)
    raster.triangle(vertex(skin.faces(f, 0)), vertex(skin.faces(f, 1)), vertex(skin.faces(f, 2)));
}

}  // namespace wrapgauge
