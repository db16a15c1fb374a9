#include "model/body/pieces.hpp"

#include <Eigen/Geometry>
#include <algorithm>

#include "model/body/edge_table.hpp"
#include "model/body/union_find.hpp"
#include "model/body/vertex_weld.hpp"

namespace wrapgauge {
namespace {

UnionFind joined_faces(const Triangles& faces) {
  UnionFind joined(static_cast<int>(faces.rows()));
  const EdgeTable edges(faces);
  for (std::size_t edge = 0; edge < edges.size(); ++edge)
    for (const EdgeTable::Use use : edges.uses(edge)) joined.join(edges.uses(edge)[0].face, use.face);
  return joined;
}

double twice_area(const RawMesh& mesh, int f) {
  const Vec3 a = mesh.vertices.row(mesh.faces(f, 0)), b = mesh.vertices.row(mesh.faces(f, 1)),
             c = mesh.vertices.row(mesh.faces(f, 2));
  return (b - a).cross(c - a).norm();
}

RawMesh cut_out(const RawMesh& mesh, const Triangles& welded, const std::vector<int>& faces) {
  RawMesh piece;
  piece.unit = mesh.unit;
  piece.coordinate_step = mesh.coordinate_step;
  piece.faces.resize(static_cast<Eigen::Index>(faces.size()), 3);
  std::vector<int> index(static_cast<std::size_t>(mesh.vertices.rows()), -1), used;
  for (std::size_t f = 0; f < faces.size(); ++f)
    for (int k = 0; k < 3; ++k) {
      int& at = index[static_cast<std::size_t>(welded(faces[f], k))];
      if (at < 0) {
        at = static_cast<int>(used.size());
        used.push_back(welded(faces[f], k));
      }
      piece.faces(static_cast<Eigen::Index>(f), k) = at;
    }
  piece.vertices.resize(static_cast<Eigen::Index>(used.size()), 3);
  for (std::size_t v = 0; v < used.size(); ++v)
    piece.vertices.row(static_cast<Eigen::Index>(v)) = mesh.vertices.row(used[v]);
  return piece;
}

}  // namespace

std::vector<Piece> pieces_of(const RawMesh& mesh, double least_share) {
  Triangles welded = mesh.faces;
  weld_vertices(mesh.vertices, welded);
  UnionFind joined = joined_faces(welded);
  const auto count = static_cast<std::size_t>(mesh.faces.rows());
  std::vector<double> area(count, 0.0);
  std::vector<std::vector<int>> faces(count);  // by root
  double whole = 0.0;
  for (int f = 0; f < mesh.faces.rows(); ++f) {
    const auto root = static_cast<std::size_t>(joined.root(f));
    area[root] += twice_area(mesh, f);
    whole += twice_area(mesh, f);
    faces[root].push_back(f);
  }
  const double largest = count == 0 ? 0.0 : *std::max_element(area.begin(), area.end());
  std::vector<std::size_t> roots;
  for (std::size_t root = 0; root < count; ++root)
    if (!faces[root].empty() && area[root] > 0.0 && area[root] >= least_share * largest)
      roots.push_back(root);
  std::stable_sort(roots.begin(), roots.end(),
                   [&](std::size_t a, std::size_t b) { return area[a] > area[b]; });
  std::vector<Piece> pieces;
  for (const std::size_t root : roots)
    pieces.push_back({cut_out(mesh, welded, faces[root]), area[root] / whole});
  return pieces;
}

}  // namespace wrapgauge
