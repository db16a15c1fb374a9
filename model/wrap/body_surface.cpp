#include "model/wrap/body_surface.hpp"

#include <algorithm>
#include <cmath>

namespace wrapgauge {
namespace {

double mean_edge_m(const TriangleMesh& mesh) {
  double sum_m = 0.0;
  for (int face = 0; face < mesh.faces.rows(); ++face)
    for (int side = 0; side < 3; ++side)
      sum_m += (mesh.vertices_m.row(mesh.faces(face, side)) -
                mesh.vertices_m.row(mesh.faces(face, (side + 1) % 3)))
                   .norm();
  return sum_m / (3.0 * static_cast<double>(mesh.faces.rows()));
}

// Averaging a vertex with its neighbours n times spreads it over about sqrt(n) edges.
int smoothing_passes(const TriangleMesh& mesh) {
  const double edges = kNormalSmoothing.si() / std::max(mean_edge_m(mesh), 1e-9);
  return static_cast<int>(std::clamp(std::ceil(edges * edges), 1.0, 40.0));
}

Points3 smoothed_normals(const TriangleMesh& mesh) {
  Points3 normals = vertex_normals(mesh);
  for (int pass = smoothing_passes(mesh); pass > 0; --pass) {
    Points3 sums = Points3::Zero(normals.rows(), 3);
    for (int face = 0; face < mesh.faces.rows(); ++face) {
      const Eigen::RowVector3d sum = normals.row(mesh.faces(face, 0)) + normals.row(mesh.faces(face, 1)) +
                                     normals.row(mesh.faces(face, 2));
      for (int corner = 0; corner < 3; ++corner) sums.row(mesh.faces(face, corner)) += sum;
    }
    for (int vertex = 0; vertex < sums.rows(); ++vertex) {
      const double length = sums.row(vertex).norm();
      if (length > 0.0) normals.row(vertex) = sums.row(vertex) / length;
    }
  }
  return normals;
}

}  // namespace

BodySurface::BodySurface(const Body& body)
    : mesh_(body.surface),
      axis_(body.axis),
      nearest_(body.surface),
      geodesics_(body.surface),
      sections_(body.surface),
      normals_(smoothed_normals(body.surface)) {
  const MeshTopology& topology = sections_.topology();
  for (int vertex = 0; vertex < mesh_.vertices_m.rows(); ++vertex) {
    const Vec3 point_m = mesh_.vertices_m.row(vertex);
    last_station_m_ = std::max(last_station_m_, station_m(point_m));
    if (topology.on_boundary(vertex)) open_rim_m_.push_back(point_m);
  }
}

Vec3 BodySurface::outward(const SurfacePoint& place) const {
  Vec3 sum = Vec3::Zero();
  for (int corner = 0; corner < 3; ++corner)
    sum += place.barycentric[corner] * normals_.row(mesh_.faces(place.face, corner)).transpose();
  return sum.norm() > 0.0 ? Vec3(sum.normalized()) : geodesics_.face_normal(place.face);
}

}  // namespace wrapgauge
