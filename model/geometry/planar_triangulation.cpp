#include "model/geometry/planar_triangulation.hpp"

#include <CGAL/Constrained_Delaunay_triangulation_2.h>
#include <CGAL/Delaunay_mesh_face_base_2.h>
#include <CGAL/Delaunay_mesh_size_criteria_2.h>
#include <CGAL/Delaunay_mesher_2.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Triangulation_vertex_base_with_info_2.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wrapgauge {
namespace {

struct PointIndex {
  int value = -1;
};
using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using VertexBase = CGAL::Triangulation_vertex_base_with_info_2<PointIndex, Kernel>;
using FaceBase = CGAL::Delaunay_mesh_face_base_2<Kernel>;
using Structure = CGAL::Triangulation_data_structure_2<VertexBase, FaceBase>;
// Lines that still cross after noding (by rounding) are split rather than refused.
using Delaunay = CGAL::Constrained_Delaunay_triangulation_2<Kernel, Structure, CGAL::Exact_predicates_tag>;

Delaunay triangulate(const PlanarGraph& graph) {
  Delaunay delaunay;
  std::vector<Delaunay::Vertex_handle> vertices;
  Delaunay::Face_handle near;
  for (std::size_t i = 0; i < graph.points_m.size(); ++i) {
    const Vec2& p = graph.points_m[i];
    const auto vertex = delaunay.insert({p.x(), p.y()}, near);
    near = vertex->face();
    if (vertex->info().value < 0) vertex->info().value = static_cast<int>(i);
    vertices.push_back(vertex);
  }
  for (const Segment& s : graph.segments)
    if (vertices[s[0]] != vertices[s[1]]) delaunay.insert_constraint(vertices[s[0]], vertices[s[1]]);
  return delaunay;
}

PlanarTriangulation as_arrays(Delaunay& delaunay, const std::vector<Vec2>& given) {
  PlanarTriangulation out{given, {}, {}};
  for (auto v = delaunay.finite_vertices_begin(); v != delaunay.finite_vertices_end(); ++v) {
    if (v->info().value >= 0) continue;
    v->info().value = static_cast<int>(out.points_m.size());
    out.points_m.emplace_back(v->point().x(), v->point().y());
  }
  for (auto f = delaunay.finite_faces_begin(); f != delaunay.finite_faces_end(); ++f)
    out.triangles.push_back(
        {f->vertex(0)->info().value, f->vertex(1)->info().value, f->vertex(2)->info().value});
  for (auto e = delaunay.finite_edges_begin(); e != delaunay.finite_edges_end(); ++e) {
    if (!delaunay.is_constrained(*e)) continue;
    const int a = e->first->vertex(Delaunay::cw(e->second))->info().value;
    const int b = e->first->vertex(Delaunay::ccw(e->second))->info().value;
    out.lines.push_back({std::min(a, b), std::max(a, b)});
  }
  std::sort(out.lines.begin(), out.lines.end());
  return out;
}

}  // namespace

PlanarTriangulation constrained_delaunay(const PlanarGraph& graph) {
  Delaunay delaunay = triangulate(graph);
  return as_arrays(delaunay, graph.points_m);
}

PlanarTriangulation refined_delaunay(const PlanarGraph& graph) {
  using Criteria = CGAL::Delaunay_mesh_size_criteria_2<Delaunay>;
  Delaunay delaunay = triangulate(graph);
  // 0.125 is the squared sine of the angle; a larger one need not end.
  if (delaunay.dimension() == 2) CGAL::refine_Delaunay_mesh_2(delaunay, Criteria(0.125, 0.0));
  return as_arrays(delaunay, graph.points_m);
}

double smallest_angle_deg(const Vec2& a, const Vec2& b, const Vec2& c) {
  const auto angle = [](const Vec2& u, const Vec2& v) {
    return std::atan2(std::abs(u.x() * v.y() - u.y() * v.x()), u.dot(v));
  };
  const double least = std::min({angle(b - a, c - a), angle(c - b, a - b), angle(a - c, b - c)});
  return least * 180.0 / std::numbers::pi;
}

}  // namespace wrapgauge
