#include "model/inflation/bending.hpp"

#include <algorithm>
#include <tuple>

namespace wrapgauge {
namespace {

// One side of a flat edge.
struct EdgeSide {
  int low, high;  // flat vertices of the edge
  int flat_triangle, opposite;
  bool operator<(const EdgeSide& o) const {
    return std::tie(low, high, flat_triangle) < std::tie(o.low, o.high, o.flat_triangle);
  }
};

std::vector<EdgeSide> sorted_edge_sides(const FlatMesh& flat) {
  std::vector<EdgeSide> sides;
  for (int t = 0; t < flat.triangles.rows(); ++t)
    for (int corner = 0; corner < 3; ++corner) {
      const int a = flat.triangles(t, corner), b = flat.triangles(t, (corner + 1) % 3);
      sides.push_back({std::min(a, b), std::max(a, b), t, flat.triangles(t, (corner + 2) % 3)});
    }
  std::sort(sides.begin(), sides.end());
  return sides;
}

bool bend_together(SheetLayer a, SheetLayer b) {
  const bool a_open = a == SheetLayer::kSkin || a == SheetLayer::kOuter;
  const bool b_open = b == SheetLayer::kSkin || b == SheetLayer::kOuter;
  return !(a_open && b_open) || a == b;
}

double cotangent(const Vec2& corner, const Vec2& p, const Vec2& q) {
  const Vec2 a = p - corner, b = q - corner;
  return a.dot(b) / std::abs(a.x() * b.y() - a.y() * b.x());
}

// Cotangent weights of the four points; they vanish on every affine map of the flat rest shape.
Eigen::Vector4d hinge_weights(const FlatMesh& flat, const EdgeSide& one, const EdgeSide& two) {
  const auto at = [&](int vertex) -> Vec2 { return flat.vertices_m.row(vertex).transpose(); };
  const Vec2 x0 = at(one.low), x1 = at(one.high), x2 = at(one.opposite), x3 = at(two.opposite);
  const double c01 = cotangent(x0, x1, x2), c02 = cotangent(x0, x1, x3);
  const double c03 = cotangent(x1, x0, x2), c04 = cotangent(x1, x0, x3);
  return {c03 + c04, c01 + c02, -c01 - c03, -c02 - c04};
}

int node_at(const SheetMesh& sheet, SheetLayer layer, int flat_vertex) {
  return layer == SheetLayer::kOuter ? sheet.outer_node[flat_vertex] : sheet.skin_node[flat_vertex];
}

Hinge make_hinge(const FlatMesh& flat, const SheetMesh& sheet, const std::vector<SheetElement>& elements,
                 const EdgeSide& one, const EdgeSide& two, int t1, int t2) {
  const SheetLayer l1 = sheet.layer[t1], l2 = sheet.layer[t2];
  const SheetLayer edge_layer =
      l1 == SheetLayer::kOuter || l2 == SheetLayer::kOuter ? SheetLayer::kOuter : l1;
  Hinge hinge;
  hinge.nodes = {node_at(sheet, edge_layer, one.low), node_at(sheet, edge_layer, one.high),
                 node_at(sheet, l1, one.opposite), node_at(sheet, l2, two.opposite)};
  hinge.triangles = {t1, t2};
  hinge.weights = hinge_weights(flat, one, two);
  const SheetElement &e1 = elements[t1], &e2 = elements[t2];
  hinge.stiffness =
      1.0 / (e1.flat_area_m2 / e1.bending_stiffness_nm + e2.flat_area_m2 / e2.bending_stiffness_nm);
  return hinge;
}

}  // namespace

std::vector<Hinge> bending_hinges(const FlatMesh& flat, const SheetMesh& sheet,
                                  const std::vector<SheetElement>& elements) {
  std::vector<std::vector<int>> sheet_triangles(flat.triangles.rows());
  for (std::size_t t = 0; t < sheet.flat_triangle.size(); ++t)
    sheet_triangles[sheet.flat_triangle[t]].push_back(static_cast<int>(t));
  std::vector<Hinge> hinges;
  const std::vector<EdgeSide> sides = sorted_edge_sides(flat);
  for (std::size_t s = 0; s + 1 < sides.size(); ++s) {
    const EdgeSide &one = sides[s], &two = sides[s + 1];
    if (one.low != two.low || one.high != two.high) continue;
    for (int t1 : sheet_triangles[one.flat_triangle])
      for (int t2 : sheet_triangles[two.flat_triangle])
        if (bend_together(sheet.layer[t1], sheet.layer[t2]))
          hinges.push_back(make_hinge(flat, sheet, elements, one, two, t1, t2));
  }
  return hinges;
}

}  // namespace wrapgauge
