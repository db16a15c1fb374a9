#include "app/picture/skin_surface.hpp"

#include "model/geometry/mesh_topology.hpp"

namespace wrapgauge {

SkinSurface::SkinSurface(const TriangleMesh& surface) : mesh_(surface), normals_(vertex_normals(surface)) {
  if (surface.faces.rows() > 0) tree_.emplace(surface);
}

SkinPoint SkinSurface::at(const Vec3& point_m, int& likely_face) const {
  SkinPoint out{point_m, Vec3::Zero()};
  if (!tree_) return out;
  const SurfacePoint found = tree_->at(point_m, likely_face);
  likely_face = found.face;
  out.point_m = found.point_m;
  for (int k = 0; k < 3; ++k)
    out.normal += found.barycentric[k] * normals_.row(mesh_.faces(found.face, k)).transpose();
  return out;
}

SkinPoint SkinSurface::at(const Vec3& point_m) const {
  int likely_face = 0;
  return at(point_m, likely_face);
}

SkinPoints SkinSurface::nearest(const Points3& points_m) const {
  SkinPoints out{Points3(points_m.rows(), 3), Points3(points_m.rows(), 3)};
  int likely_face = 0;
  for (Eigen::Index v = 0; v < points_m.rows(); ++v) {
    const SkinPoint found = at(points_m.row(v), likely_face);
    out.points_m.row(v) = found.point_m;
    out.normals.row(v) = found.normal;
  }
  return out;
}

// In steps as long as the way to the nearest skin, which is never passed by so.
std::optional<Vec3> SkinSurface::first_met(const Vec3& from_m, const Vec3& direction, double reach_m) const {
  constexpr double kMet_m = 1e-6;
  if (!tree_) return std::nullopt;
  int likely_face = 0;
  for (double gone_m = 0.0; gone_m <= reach_m;) {
    const SurfacePoint nearest = tree_->at(from_m + gone_m * direction, likely_face);
    if (nearest.distance_m < kMet_m) return nearest.point_m;
    likely_face = nearest.face;
    gone_m += nearest.distance_m;
  }
  return std::nullopt;
}

}  // namespace wrapgauge
