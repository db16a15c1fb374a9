#include "model/geometry/planar_triangulation.hpp"

#include <CGAL/Constrained_Delaunay_triangulation_2.h>
#include <CGAL/Delaunay_mesh_face_base_2.h>
#include <CGAL/Delaunay_mesh_size_criteria_2.h>
#include <CGAL/Delaunay_mesher_2.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Triangulation_face_base_with_info_2.h>
#include <CGAL/Triangulation_vertex_base_with_info_2.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace wrapgauge {
namespace {

struct PointIndex {
  int value = -1;
};
using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using VertexBase = CGAL::Triangulation_vertex_base_with_info_2<PointIndex, Kernel>;
using FaceBase =
    CGAL::Triangulation_face_base_with_info_2<int, Kernel, CGAL::Delaunay_mesh_face_base_2<Kernel>>;
using Structure = CGAL::Triangulation_data_structure_2<VertexBase, FaceBase>;
// Lines that still cross after noding (by rounding) are split rather than refused.
using Delaunay = CGAL::Constrained_Delaunay_triangulation_2<Kernel, Structure, CGAL::Exact_predicates_tag>;

struct Triangulated {
  Delaunay delaunay;
  std::vector<Delaunay::Vertex_handle> vertices;  // of the graph's points
};

// In place, as vertex handles would not survive a copy.
void triangulate(const PlanarGraph& graph, Triangulated& out) {
  Delaunay::Face_handle near;
  for (std::size_t i = 0; i < graph.points_m.size(); ++i) {
    const Vec2& p = graph.points_m[i];
    const auto vertex = out.delaunay.insert({p.x(), p.y()}, near);
    near = vertex->face();
    if (vertex->info().value < 0) vertex->info().value = static_cast<int>(i);
    out.vertices.push_back(vertex);
  }
  for (const Segment& s : graph.segments)
    if (out.vertices[s[0]] != out.vertices[s[1]])
      out.delaunay.insert_constraint(out.vertices[s[0]], out.vertices[s[1]]);
}

// The other end of the constrained edge that leads from a point of a line on towards the line's end.
Delaunay::Vertex_handle next_on_line(const Delaunay& delaunay, Delaunay::Vertex_handle at,
                                     Delaunay::Vertex_handle end) {
  Delaunay::Vertex_handle next = end;
  double straightest = -std::numeric_limits<double>::infinity();
  auto edge = delaunay.incident_edges(at);
  const auto first = edge;
  do {
    if (delaunay.is_infinite(edge) || !delaunay.is_constrained(*edge)) continue;
    const auto one = edge->first->vertex(Delaunay::cw(edge->second));
    const auto other = one == at ? edge->first->vertex(Delaunay::ccw(edge->second)) : one;
    if (other == end) return end;
    const auto step = other->point() - at->point();
    const double ahead = step * (end->point() - at->point()) / std::sqrt(step.squared_length());
    if (ahead > straightest) straightest = ahead, next = other;
  } while (++edge != first);
  return next;
}

std::vector<LinePiece> line_pieces(const Triangulated& of, const PlanarGraph& graph) {
  std::vector<LinePiece> pieces;
  if (of.delaunay.dimension() < 2) return pieces;
  for (std::size_t s = 0; s < graph.segments.size(); ++s) {
    const auto end = of.vertices[graph.segments[s][1]];
    for (auto at = of.vertices[graph.segments[s][0]]; at != end;) {
      const auto next = next_on_line(of.delaunay, at, end);
      const int a = at->info().value, b = next->info().value;
      pieces.push_back({{std::min(a, b), std::max(a, b)}, static_cast<int>(s), b < a});
      at = next;
    }
  }
  const auto before = [](const LinePiece& a, const LinePiece& b) { return a.ends < b.ends; };
  std::stable_sort(pieces.begin(), pieces.end(), before);
  return pieces;
}

std::optional<int> piece_between(const std::vector<LinePiece>& pieces, int a, int b) {
  const Segment ends{std::min(a, b), std::max(a, b)};
  const auto found =
      std::lower_bound(pieces.begin(), pieces.end(), ends,
                       [](const LinePiece& piece, const Segment& e) { return piece.ends < e; });
  if (found == pieces.end() || found->ends != ends) return std::nullopt;
  return static_cast<int>(found - pieces.begin());
}

PlanarTriangulation as_arrays(Triangulated& of, const PlanarGraph& graph) {
  PlanarTriangulation out{graph.points_m, {}, {}, {}, {}};
  for (const auto v : of.delaunay.finite_vertex_handles()) {
    if (v->info().value >= 0) continue;
    v->info().value = static_cast<int>(out.points_m.size());
    out.points_m.emplace_back(v->point().x(), v->point().y());
  }
  out.lines = line_pieces(of, graph);
  int count = 0;
  for (const auto f : of.delaunay.finite_face_handles()) f->info() = count++;
  for (const auto f : of.delaunay.finite_face_handles()) {
    out.triangles.push_back(
        {f->vertex(0)->info().value, f->vertex(1)->info().value, f->vertex(2)->info().value});
    PlanarTriangulation::ThreeOrNone across, line_on;
    for (int k = 0; k < 3; ++k) {
      const int opposite = Delaunay::cw(k);  // the corner that the edge from corner k to the next leaves out
      if (const auto g = f->neighbor(opposite); !of.delaunay.is_infinite(g)) across[k] = g->info();
      if (f->is_constrained(opposite))
        line_on[k] = piece_between(out.lines, out.triangles.back()[k], out.triangles.back()[(k + 1) % 3]);
    }
    out.across.push_back(across);
    out.line_on.push_back(line_on);
  }
  return out;
}

bool holds(const PlanarTriangulation& mesh, int t, const Vec2& p) {
  const auto& [a, b, c] = mesh.triangles[t];
  const Vec2 &pa = mesh.points_m[a], &pb = mesh.points_m[b], &pc = mesh.points_m[c];
  return cross(pb - pa, p - pa) >= 0.0 && cross(pc - pb, p - pb) >= 0.0 && cross(pa - pc, p - pc) >= 0.0;
}

}  // namespace

PlanarTriangulation constrained_delaunay(const PlanarGraph& graph) {
  Triangulated of;
  triangulate(graph, of);
  return as_arrays(of, graph);
}

PlanarTriangulation refined_delaunay(const PlanarGraph& graph) {
  using Criteria = CGAL::Delaunay_mesh_size_criteria_2<Delaunay>;
  Triangulated of;
  triangulate(graph, of);
  // 0.125 is the squared sine of the angle; a larger one need not end.
  if (of.delaunay.dimension() == 2) CGAL::refine_Delaunay_mesh_2(of.delaunay, Criteria(0.125, 0.0));
  return as_arrays(of, graph);
}

std::optional<int> triangle_at(const PlanarTriangulation& mesh, const Vec2& point, int start) {
  if (mesh.triangles.empty()) return std::nullopt;
  int t = start;
  // Beside lines a walk may go round in circles, so it gives up after a while and looks at every triangle.
  for (std::size_t step = 0; step < mesh.triangles.size(); ++step) {
    bool moved = false;
    for (int side = 0; side < 3 && !moved; ++side) {
      const int k = (side + static_cast<int>(step)) % 3;
      const Vec2 &a = mesh.points_m[mesh.triangles[t][k]], &b = mesh.points_m[mesh.triangles[t][(k + 1) % 3]];
      if (cross(b - a, point - a) >= 0.0) continue;
      if (!mesh.across[t][k]) return std::nullopt;
      t = *mesh.across[t][k];
      moved = true;
    }
    if (!moved) return t;
  }
  for (std::size_t i = 0; i < mesh.triangles.size(); ++i)
    if (holds(mesh, static_cast<int>(i), point)) return static_cast<int>(i);
  return std::nullopt;
}

double smallest_angle_deg(const Vec2& a, const Vec2& b, const Vec2& c) {
  const auto angle = [](const Vec2& u, const Vec2& v) {
    return std::atan2(std::abs(u.x() * v.y() - u.y() * v.x()), u.dot(v));
  };
  const double least = std::min({angle(b - a, c - a), angle(c - b, a - b), angle(a - c, b - c)});
  return least * 180.0 / std::numbers::pi;
}

}  // namespace wrapgauge
