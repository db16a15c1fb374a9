#include <Eigen/Geometry>
#include <algorithm>

#include "model/body/edge_table.hpp"
#include "model/body/mend_step.hpp"
#include "model/body/thin_face.hpp"
#include "model/body/union_find.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

double face_area_m2(const TriangleMesh& mesh, int f) {
  const Vec3 a = mesh.vertices_m.row(mesh.faces(f, 0)), b = mesh.vertices_m.row(mesh.faces(f, 1)),
             c = mesh.vertices_m.row(mesh.faces(f, 2));
  return 0.5 * (b - a).cross(c - a).norm();
}

UnionFind pieces_of(const Triangles& faces) {
  UnionFind pieces(static_cast<int>(faces.rows()));
  const EdgeTable edges(faces);
  for (std::size_t edge = 0; edge < edges.size(); ++edge)
    for (const EdgeTable::Use use : edges.uses(edge)) pieces.join(edges.uses(edge)[0].face, use.face);
  return pieces;
}

}  // namespace

Result<Mended> drop_crumbs(const Scan& scan, const DropCrumbs& options) {
  const TriangleMesh& mesh = scan.surface;
  UnionFind pieces = pieces_of(mesh.faces);
  std::vector<double> area_m2(static_cast<std::size_t>(mesh.faces.rows()), 0.0);
  for (int f = 0; f < mesh.faces.rows(); ++f) area_m2[pieces.root(f)] += face_area_m2(mesh, f);
  const double largest = *std::max_element(area_m2.begin(), area_m2.end());
  const auto is_crumb = [&](int root) { return area_m2[root] < options.below_share * largest; };
  std::vector<char> keep(area_m2.size());
  double crumbs = 0.0, dropped_m2 = 0.0, left = 0.0;
  for (int f = 0; f < mesh.faces.rows(); ++f) {
    const int root = pieces.root(f);
    keep[f] = !is_crumb(root);
    if (root != f) continue;
    (keep[f] ? left : crumbs) += 1.0;
    if (!keep[f]) dropped_m2 += area_m2[f];
  }
  TriangleMesh rest = mesh;
  keep_faces(rest.faces, keep);
  const auto faces = static_cast<double>(mesh.faces.rows() - rest.faces.rows());
  MendReport report{
      MendKind::kDropCrumbs,
      Phrase::worded("Dropped %1 loose pieces (%2 faces, %3); %4 left.",
                     {figures_of(fixed_text(crumbs, 0)), figures_of(fixed_text(faces, 0)),
                      figures_of(fixed_text(1e4 * dropped_m2, 1) + " cm²"), figures_of(fixed_text(left, 0))}),
      {{"pieces_dropped", crumbs},
       {"faces_dropped", faces},
       {"area_dropped_mm2", 1e6 * dropped_m2},
       {"pieces_left", left}}};
  return Mended{with_surface(scan, std::move(rest)), std::move(report)};
}

}  // namespace wrapgauge
