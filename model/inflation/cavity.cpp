#include "model/inflation/cavity.hpp"

#include <Eigen/Geometry>

#include "model/inflation/cross_matrix.hpp"
#include "model/layout/flat_places.hpp"

namespace wrapgauge {
namespace {

double triangle_share(const SheetMesh& sheet, const Points3& x, int t) {
  const Vec3 a = x.row(sheet.triangles(t, 0)), b = x.row(sheet.triangles(t, 1)),
             c = x.row(sheet.triangles(t, 2));
  return a.dot(b.cross(c)) / 6.0;
}

}  // namespace

VolumeShare volume_share(const Vec3& x0, const Vec3& x1, const Vec3& x2) {
  constexpr double kSixth = 1.0 / 6.0;
  VolumeShare share;
  share.gradient[0] = kSixth * x1.cross(x2);
  share.gradient[1] = kSixth * x2.cross(x0);
  share.gradient[2] = kSixth * x0.cross(x1);
  share.value = x0.dot(share.gradient[0]);
  share.block10 = cross_matrix(kSixth * x2);
  share.block20 = cross_matrix(-kSixth * x1);
  share.block21 = cross_matrix(kSixth * x0);
  return share;
}

double cavity_volume_m3(const SheetMesh& sheet, GroupId group, const Points3& positions_m) {
  const SheetMesh::Cavity& cavity = sheet.cavities[index_of(group)];
  double volume = 0.0;
  for (int t : cavity.outer_triangles) volume += triangle_share(sheet, positions_m, t);
  for (int t : cavity.skin_triangles) volume -= triangle_share(sheet, positions_m, t);
  return volume;
}

// Mean of the sheets' displacement times the area vector, both averaged over the way between the sheets: the
// area vector is quadratic along it.
double prism_volume_m3(const FlatMesh& flat, Eigen::Index t, const SheetMesh& sheet,
                       const Points3& positions_m) {
  const auto edge = [&](const std::vector<int>& node_of, int corner) -> Vec3 {
    return (positions_m.row(node_of[flat.triangles(t, corner)]) -
            positions_m.row(node_of[flat.triangles(t, 0)]))
        .transpose();
  };
  const Vec3 p = edge(sheet.skin_node, 1), q = edge(sheet.skin_node, 2), r = edge(sheet.outer_node, 1),
             s = edge(sheet.outer_node, 2);
  const Vec3 area = (p.cross(q) + r.cross(s)) / 6.0 + (p.cross(s) + r.cross(q)) / 12.0;
  Vec3 apart = Vec3::Zero();
  for (int corner = 0; corner < 3; ++corner) {
    const int vertex = flat.triangles(t, corner);
    apart +=
        (positions_m.row(sheet.outer_node[vertex]) - positions_m.row(sheet.skin_node[vertex])).transpose() /
        3.0;
  }
  return area.dot(apart);
}

PrismVolumes volumes_by_prisms(const FlatMesh& flat, const SheetMesh& sheet, const Points3& positions_m) {
  PrismVolumes volumes{std::vector<double>(flat.group_inlet.size(), 0.0),
                       std::vector<double>(flat.chamber_group.size(), 0.0)};
  for (Eigen::Index t = 0; t < flat.triangles.rows(); ++t) {
    const FlatRegion& region = flat.regions[static_cast<std::size_t>(t)];
    const auto group = group_of(flat, region);
    if (!group) continue;
    const double prism_m3 = prism_volume_m3(flat, t, sheet, positions_m);
    volumes.group_m3[index_of(*group)] += prism_m3;
    if (region.kind == RegionKind::kChamber)
      volumes.chamber_m3[static_cast<std::size_t>(region.part)] += prism_m3;
  }
  return volumes;
}

}  // namespace wrapgauge
