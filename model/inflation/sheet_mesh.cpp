#include "model/inflation/sheet_mesh.hpp"

#include <algorithm>

#include "model/layout/flat_places.hpp"

namespace wrapgauge {
namespace {

// A flat vertex is doubled only where every triangle around it is open. The layout's own rim is never open:
// sheets end fused there.
std::vector<bool> doubled_vertices(const FlatMesh& flat) {
  std::vector<bool> doubled = vertices_on_edge(flat);
  doubled.flip();
  for (Eigen::Index t = 0; t < flat.triangles.rows(); ++t)
    if (!is_open(flat.regions[t]))
      for (int corner = 0; corner < 3; ++corner) doubled[flat.triangles(t, corner)] = false;
  return doubled;
}

}  // namespace

std::vector<bool> vertices_on_edge(const FlatMesh& flat) {
  std::vector<bool> on_edge(flat.vertices_m.rows(), false);
  std::vector<std::pair<int, int>> edges;
  for (Eigen::Index t = 0; t < flat.triangles.rows(); ++t)
    for (int corner = 0; corner < 3; ++corner)
      edges.emplace_back(std::minmax(flat.triangles(t, corner), flat.triangles(t, (corner + 1) % 3)));
  std::sort(edges.begin(), edges.end());
  for (std::size_t e = 0; e < edges.size(); ++e) {
    const bool shared =
        (e > 0 && edges[e - 1] == edges[e]) || (e + 1 < edges.size() && edges[e + 1] == edges[e]);
    if (!shared) on_edge[edges[e].first] = on_edge[edges[e].second] = true;
  }
  return on_edge;
}

SheetMesh make_sheet_mesh(const FlatMesh& flat) {
  SheetMesh sheet;
  const std::vector<bool> doubled = doubled_vertices(flat);
  const auto new_node = [&](int vertex) {
    sheet.flat_vertex.push_back(vertex);
    return sheet.node_count++;
  };
  for (int vertex = 0; vertex < flat.vertices_m.rows(); ++vertex) {
    sheet.skin_node.push_back(new_node(vertex));
    sheet.outer_node.push_back(doubled[vertex] ? new_node(vertex) : sheet.skin_node.back());
  }

  sheet.cavities.resize(flat.group_inlet.size());
  std::vector<Eigen::RowVector3i> triangles;
  const auto new_triangle = [&](Eigen::Index t, const std::vector<int>& node_of, SheetLayer layer) {
    triangles.emplace_back(node_of[flat.triangles(t, 0)], node_of[flat.triangles(t, 1)],
                           node_of[flat.triangles(t, 2)]);
    sheet.layer.push_back(layer);
    sheet.flat_triangle.push_back(static_cast<int>(t));
    return static_cast<int>(triangles.size()) - 1;
  };
  for (Eigen::Index t = 0; t < flat.triangles.rows(); ++t) {
    const FlatRegion& region = flat.regions[t];
    if (const auto group = group_of(flat, region)) {
      SheetMesh::Cavity& cavity = sheet.cavities[index_of(*group)];
      cavity.skin_triangles.push_back(new_triangle(t, sheet.skin_node, SheetLayer::kSkin));
      cavity.outer_triangles.push_back(new_triangle(t, sheet.outer_node, SheetLayer::kOuter));
    } else {
      const bool strap = region.kind == RegionKind::kStrap;
      new_triangle(t, sheet.skin_node, strap ? SheetLayer::kStrap : SheetLayer::kFused);
    }
  }
  sheet.triangles.resize(static_cast<Eigen::Index>(triangles.size()), 3);
  for (std::size_t t = 0; t < triangles.size(); ++t)
    sheet.triangles.row(static_cast<Eigen::Index>(t)) = triangles[t];
  return sheet;
}

}  // namespace wrapgauge
