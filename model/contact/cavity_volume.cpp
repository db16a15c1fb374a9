#include "model/contact/cavity_volume.hpp"

#include <Eigen/Geometry>
#include <array>

namespace wrapgauge {
namespace {

double tetrahedron(const Vec3& a, const Vec3& b, const Vec3& c) {
  return a.dot(b.cross(c)) / 6.0;
}

// Between a skin triangle and the outer triangle above it. Each side wall is taken as the mean of its two
// triangulations, so that neighbours agree about it.
double prism_m3(const std::array<Vec3, 3>& skin, const std::array<Vec3, 3>& outer) {
  double volume = tetrahedron(outer[0], outer[1], outer[2]) - tetrahedron(skin[0], skin[1], skin[2]);
  for (int k = 0; k < 3; ++k) {
    const Vec3 &a = skin[k], &b = skin[(k + 1) % 3], &c = outer[(k + 1) % 3], &d = outer[k];
    volume +=
        0.5 * (tetrahedron(a, b, c) + tetrahedron(a, c, d) + tetrahedron(a, b, d) + tetrahedron(b, c, d));
  }
  return volume;
}

double volume_over(const FlatMesh& flat, Eigen::Index t, const SheetMesh& sheet, const Points3& positions_m) {
  const Vec3 origin = positions_m.row(sheet.skin_node[flat.triangles(t, 0)]);
  std::array<Vec3, 3> skin, outer;
  for (int corner = 0; corner < 3; ++corner) {
    const int vertex = flat.triangles(t, corner);
    skin[corner] = positions_m.row(sheet.skin_node[vertex]).transpose() - origin;
    outer[corner] = positions_m.row(sheet.outer_node[vertex]).transpose() - origin;
  }
  return prism_m3(skin, outer);
}

}  // namespace

std::vector<Volume> chamber_volumes(const InflationSetup& setup, const SheetMesh& sheet,
                                    const EquilibriumState& state) {
  const FlatMesh& flat = setup.flat;
  std::vector<double> own(flat.chamber_group.size(), 0.0);
  for (Eigen::Index t = 0; t < flat.triangles.rows(); ++t)
    if (flat.regions[t].kind == RegionKind::kChamber)
      own[flat.regions[t].part] += volume_over(flat, t, sheet, state.positions_m);

  std::vector<double> of_group(static_cast<std::size_t>(state.group_volume_m3.size()), 0.0);
  for (std::size_t c = 0; c < own.size(); ++c) of_group[index_of(flat.chamber_group[c])] += own[c];
  std::vector<Volume> volumes;
  for (std::size_t c = 0; c < own.size(); ++c) {
    const std::size_t g = index_of(flat.chamber_group[c]);
    const double share = of_group[g] != 0.0 ? own[c] / of_group[g] : 0.0;
    volumes.emplace_back(share * state.group_volume_m3[static_cast<Eigen::Index>(g)]);
  }
  return volumes;
}

}  // namespace wrapgauge
