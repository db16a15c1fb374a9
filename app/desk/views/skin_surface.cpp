#include "app/desk/views/skin_surface.hpp"

#include "model/geometry/mesh_topology.hpp"

namespace wrapgauge {

SkinSurface::SkinSurface(const TriangleMesh& surface) : mesh_(surface), normals_(vertex_normals(surface)) {
  if (surface.faces.rows() > 0) tree_.emplace(surface);
}

SkinPoints SkinSurface::nearest(const Points3& points_m) const {
  SkinPoints out{points_m, Points3::Zero(points_m.rows(), 3)};
  if (!tree_) return out;
  int likely = 0;
  for (Eigen::Index v = 0; v < points_m.rows(); ++v) {
    const SurfacePoint found = tree_->at(points_m.row(v), likely);
    likely = found.face;
    Vec3 normal = Vec3::Zero();
    for (int k = 0; k < 3; ++k)
      normal += found.barycentric[k] * normals_.row(mesh_.faces(found.face, k)).transpose();
    out.points_m.row(v) = found.point_m;
    out.normals.row(v) = normal.normalized();
  }
  return out;
}

}  // namespace wrapgauge
