#pragma once
// Between our meshes and CGAL's. Include from .cpp files only.

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Surface_mesh.h>

#include <optional>

#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

using CgalKernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using CgalMesh = CGAL::Surface_mesh<CgalKernel::Point_3>;

// Vertices and faces keep their numbers. None: the faces do not make a manifold surface.
inline std::optional<CgalMesh> to_cgal(const TriangleMesh& mesh) {
  CgalMesh out;
  for (Eigen::Index v = 0; v < mesh.vertices_m.rows(); ++v)
    out.add_vertex({mesh.vertices_m(v, 0), mesh.vertices_m(v, 1), mesh.vertices_m(v, 2)});
  for (Eigen::Index f = 0; f < mesh.faces.rows(); ++f) {
    const auto corner = [&](int k) {
      return CgalMesh::Vertex_index(static_cast<unsigned>(mesh.faces(f, k)));
    };
    if (out.add_face(corner(0), corner(1), corner(2)) == CgalMesh::null_face()) return std::nullopt;
  }
  return out;
}

inline TriangleMesh from_cgal(CgalMesh& mesh) {
  mesh.collect_garbage();
  TriangleMesh out;
  out.vertices_m.resize(static_cast<Eigen::Index>(mesh.number_of_vertices()), 3);
  out.faces.resize(static_cast<Eigen::Index>(mesh.number_of_faces()), 3);
  for (const auto v : mesh.vertices()) {
    const auto& p = mesh.point(v);
    out.vertices_m.row(static_cast<Eigen::Index>(v.idx())) << p.x(), p.y(), p.z();
  }
  for (const auto f : mesh.faces()) {
    int k = 0;
    for (const auto v : mesh.vertices_around_face(mesh.halfedge(f)))
      out.faces(static_cast<Eigen::Index>(f.idx()), k++) = static_cast<int>(v.idx());
  }
  return out;
}

}  // namespace wrapgauge
