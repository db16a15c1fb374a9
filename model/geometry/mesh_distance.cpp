#include "model/geometry/mesh_distance.hpp"

#include <Eigen/Geometry>
#include <cmath>
#include <string>

namespace wrapgauge {
namespace {

// The side whose edge the point lies on (its opposite corner has weight 0), none inside the face.
std::optional<int> side_of(const Vec3& barycentric) {
  for (int side = 0; side < 3; ++side)
    if (barycentric[(side + 2) % 3] == 0.0) return side;
  return std::nullopt;
}

std::optional<int> corner_of(const Vec3& barycentric) {
  for (int corner = 0; corner < 3; ++corner)
    if (barycentric[(corner + 1) % 3] == 0.0 && barycentric[(corner + 2) % 3] == 0.0) return corner;
  return std::nullopt;
}

// Unit, in the plane of the face, perpendicular to its side and away from the face.
Vec3 off_the_side(const TriangleMesh& mesh, const Points3& face_normals, int face, int side) {
  const Vec3 from = mesh.vertices_m.row(mesh.faces(face, side));
  const Vec3 to = mesh.vertices_m.row(mesh.faces(face, (side + 1) % 3));
  return (to - from).cross(Vec3(face_normals.row(face))).normalized();
}

}  // namespace

MeshDistance::MeshDistance(const TriangleMesh& mesh)
    : mesh_(mesh),
      nearest_(mesh),
      topology_(mesh),
      face_normals_(wrapgauge::face_normals(mesh)),
      vertex_normals_(wrapgauge::vertex_normals(mesh)),
      vertex_outward_of_boundary_(Points3::Zero(mesh.vertices_m.rows(), 3)) {
  for (int face = 0; face < mesh.faces.rows(); ++face) {
    for (int side = 0; side < 3; ++side) {
      if (topology_.across(face, side)) continue;
      const Vec3 off = off_the_side(mesh_, face_normals_, face, side);
      for (int corner : {side, (side + 1) % 3})
        vertex_outward_of_boundary_.row(mesh.faces(face, corner)) += off.transpose();
    }
  }
  for (int vertex = 0; vertex < mesh.vertices_m.rows(); ++vertex)
    vertex_outward_of_boundary_.row(vertex).stableNormalize();
}

Vec3 MeshDistance::normal_at(const SurfacePoint& nearest) const {
  if (const auto corner = corner_of(nearest.barycentric))
    return vertex_normals_.row(mesh_.faces(nearest.face, *corner));
  Vec3 normal = face_normals_.row(nearest.face);
  if (const auto side = side_of(nearest.barycentric))
    if (const auto other = topology_.across(nearest.face, *side)) normal += face_normals_.row(other->face);
  return normal;
}

// Unit direction along the surface that leads off it at an open edge; zero elsewhere.
Vec3 MeshDistance::away_from_surface(const SurfacePoint& nearest) const {
  if (const auto corner = corner_of(nearest.barycentric))
    return vertex_outward_of_boundary_.row(mesh_.faces(nearest.face, *corner));
  const auto side = side_of(nearest.barycentric);
  if (!side || topology_.across(nearest.face, *side)) return Vec3::Zero();
  return off_the_side(mesh_, face_normals_, nearest.face, *side);
}

MeshDistance::Sample MeshDistance::at(const Vec3& point_m, std::optional<int> likely_face) const {
  const SurfacePoint nearest = likely_face ? nearest_.at(point_m, *likely_face) : nearest_.at(point_m);
  const Vec3 from_surface = point_m - nearest.point_m;
  const double side = from_surface.dot(normal_at(nearest));
  const Vec3 away = away_from_surface(nearest);
  const double beyond = from_surface.dot(away);
  const double distance = beyond > 0.0 ? (from_surface - beyond * away).norm() : nearest.distance_m;
  return {side < 0.0 ? -distance : distance, nearest.face};
}

Result<MeshDistance> make_mesh_distance(const TriangleMesh& mesh) {
  if (mesh.faces.rows() == 0)
    return bad_input(Phrase::worded("The surface has no faces, so nothing can be near it."));
  if (mesh.faces.minCoeff() < 0 || mesh.faces.maxCoeff() >= mesh.vertices_m.rows())
    return bad_input(
        Phrase::worded("A face of the surface names vertex %1, but there are %2 vertices.",
                       {figures_of(mesh.faces.minCoeff() < 0 ? mesh.faces.minCoeff() : mesh.faces.maxCoeff()),
                        figures_of(static_cast<int>(mesh.vertices_m.rows()))}));
  if (!mesh.vertices_m.allFinite())
    return bad_input(Phrase::worded("A vertex of the surface has a coordinate that is not a finite number."));
  return MeshDistance(mesh);
}

}  // namespace wrapgauge
