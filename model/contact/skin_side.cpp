#include "model/contact/skin_side.hpp"

#include <Eigen/Geometry>

namespace wrapgauge {
namespace {

std::optional<ChamberId> chamber_around(const Layout& layout, const Vec2& point) {
  for (std::size_t c = 0; c < layout.chambers.size(); ++c)
    if (contains(layout.chambers[c].boundary_m, point)) return ChamberId(static_cast<int>(c));
  return std::nullopt;
}

}  // namespace

TriangleMesh skin_side(const InflationSetup& setup, const SheetMesh& sheet, const Points3& positions_m) {
  TriangleMesh side;
  side.faces = setup.flat.triangles;
  side.vertices_m.resize(setup.flat.vertices_m.rows(), 3);
  for (Eigen::Index v = 0; v < side.vertices_m.rows(); ++v)
    side.vertices_m.row(v) = positions_m.row(sheet.skin_node[v]);
  return side;
}

Eigen::VectorXd triangle_areas_m2(const TriangleMesh& mesh) {
  Eigen::VectorXd areas(mesh.faces.rows());
  for (Eigen::Index t = 0; t < mesh.faces.rows(); ++t) {
    const Vec3 a = mesh.vertices_m.row(mesh.faces(t, 0));
    const Vec3 b = mesh.vertices_m.row(mesh.faces(t, 1));
    const Vec3 c = mesh.vertices_m.row(mesh.faces(t, 2));
    areas[t] = 0.5 * (b - a).cross(c - a).norm();
  }
  return areas;
}

Eigen::VectorXd vertex_areas_m2(const TriangleMesh& mesh) {
  const Eigen::VectorXd areas = triangle_areas_m2(mesh);
  Eigen::VectorXd shares = Eigen::VectorXd::Zero(mesh.vertices_m.rows());
  for (Eigen::Index t = 0; t < mesh.faces.rows(); ++t)
    for (int corner = 0; corner < 3; ++corner) shares[mesh.faces(t, corner)] += areas[t] / 3.0;
  return shares;
}

std::vector<std::optional<ChamberId>> chamber_of_triangles(const Layout& layout, const FlatMesh& flat) {
  std::vector<std::optional<ChamberId>> chambers(flat.regions.size());
  for (std::size_t t = 0; t < flat.regions.size(); ++t) {
    const FlatRegion& region = flat.regions[t];
    if (region.kind == RegionKind::kChamber) chambers[t] = ChamberId(region.part);
    if (region.kind != RegionKind::kWeld) continue;
    Vec2 centre = Vec2::Zero();
    for (int corner = 0; corner < 3; ++corner)
      centre += flat.vertices_m.row(flat.triangles(static_cast<Eigen::Index>(t), corner)).transpose() / 3.0;
    chambers[t] = chamber_around(layout, centre);
  }
  return chambers;
}

}  // namespace wrapgauge
