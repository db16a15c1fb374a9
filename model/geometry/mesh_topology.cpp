#include "model/geometry/mesh_topology.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <tuple>

#include "model/geometry/keyed_runs.hpp"

namespace wrapgauge {
namespace {

struct SideEnd {
  int high;      // the side's higher vertex
  int place;     // 3 * face + side
  bool forward;  // runs from the lower vertex to the higher one
};

// Sides by their lower vertex.
KeyedRuns<SideEnd> sides_by_low_vertex(const TriangleMesh& mesh) {
  return {static_cast<std::size_t>(mesh.vertices_m.rows()), [&](const auto& put) {
            for (int face = 0; face < mesh.faces.rows(); ++face)
              for (int side = 0; side < 3; ++side) {
                const int from = mesh.faces(face, side), to = mesh.faces(face, (side + 1) % 3);
                put(std::min(from, to), SideEnd{std::max(from, to), 3 * face + side, from < to});
              }
          }};
}

}  // namespace

MeshTopology::MeshTopology(const TriangleMesh& mesh)
    : across_(3 * mesh.faces.rows()),
      boundary_vertex_(mesh.vertices_m.rows(), 0),
      vertex_start_(mesh.vertices_m.rows() + 1, 0),
      vertex_faces_(3 * mesh.faces.rows()) {
  KeyedRuns<SideEnd> sides = sides_by_low_vertex(mesh);
  for (std::size_t low = 0; low < sides.keys(); ++low) {
    const auto run = sides.run(low);
    std::sort(run.begin(), run.end(), [](const SideEnd& a, const SideEnd& b) {
      return std::tie(a.high, a.place) < std::tie(b.high, b.place);
    });
    for (std::size_t begin = 0, end = 0; begin < run.size(); begin = end) {
      while (end < run.size() && run[end].high == run[begin].high) ++end;
      const bool paired = end - begin == 2 && run[begin].forward != run[begin + 1].forward;
      for (std::size_t i = begin; i < end; ++i)
        across_[run[i].place] = paired ? run[begin + end - 1 - i].place : run[i].place;
      if (!paired) boundary_vertex_[low] = boundary_vertex_[run[begin].high] = 1;
    }
  }
  for (int corner : mesh.faces.reshaped<Eigen::RowMajor>()) ++vertex_start_[corner + 1];
  for (std::size_t v = 1; v < vertex_start_.size(); ++v) vertex_start_[v] += vertex_start_[v - 1];
  std::vector<int> next(vertex_start_.begin(), vertex_start_.end() - 1);
  for (int face = 0; face < mesh.faces.rows(); ++face)
    for (int corner = 0; corner < 3; ++corner) vertex_faces_[next[mesh.faces(face, corner)]++] = face;
}

std::optional<FaceSide> MeshTopology::across(int face, int side) const {
  const int own = 3 * face + side, other = across_[own];
  if (other == own) return std::nullopt;
  return FaceSide{other / 3, other % 3};
}

std::span<const int> MeshTopology::faces_at(int vertex) const {
  return std::span(vertex_faces_)
      .subspan(vertex_start_[vertex], vertex_start_[vertex + 1] - vertex_start_[vertex]);
}

Points3 face_normals(const TriangleMesh& mesh) {
  Points3 normals(mesh.faces.rows(), 3);
  for (int face = 0; face < mesh.faces.rows(); ++face) {
    const Vec3 a = mesh.vertices_m.row(mesh.faces(face, 0));
    const Vec3 b = mesh.vertices_m.row(mesh.faces(face, 1));
    const Vec3 c = mesh.vertices_m.row(mesh.faces(face, 2));
    const Vec3 normal = (b - a).cross(c - a);
    const double length = normal.norm();
    normals.row(face) = length > 0.0 ? Vec3(normal / length) : Vec3(Vec3::Zero());
  }
  return normals;
}

Points3 vertex_normals(const TriangleMesh& mesh) {
  const Points3 normals = face_normals(mesh);
  Points3 sums = Points3::Zero(mesh.vertices_m.rows(), 3);
  for (int face = 0; face < mesh.faces.rows(); ++face) {
    for (int corner = 0; corner < 3; ++corner) {
      const int vertex = mesh.faces(face, corner);
      const Vec3 here = mesh.vertices_m.row(vertex);
      const Vec3 one = mesh.vertices_m.row(mesh.faces(face, (corner + 1) % 3)).transpose() - here;
      const Vec3 two = mesh.vertices_m.row(mesh.faces(face, (corner + 2) % 3)).transpose() - here;
      sums.row(vertex) += std::atan2(one.cross(two).norm(), one.dot(two)) * normals.row(face);
    }
  }
  for (int vertex = 0; vertex < sums.rows(); ++vertex) {
    const double length = sums.row(vertex).norm();
    if (length > 0.0) sums.row(vertex) /= length;
  }
  return sums;
}

}  // namespace wrapgauge
