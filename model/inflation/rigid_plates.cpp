#include "model/inflation/rigid_plates.hpp"

#include <Eigen/Geometry>
#include <algorithm>

namespace wrapgauge {
namespace {

constexpr double kRigid_pa_per_m = 2e8;  // a few kPa push a node in by some 0.01 mm

// Rest area over three of the triangles around each node, of one side of the device.
std::vector<double> side_areas_m2(const FlatMesh& flat, const SheetMesh& sheet, SheetLayer other_side) {
  std::vector<double> area(static_cast<std::size_t>(sheet.node_count), 0.0);
  for (Eigen::Index t = 0; t < sheet.triangles.rows(); ++t) {
    if (sheet.layer[t] == other_side) continue;
    const auto corner = [&](int c) -> Vec2 {
      return flat.vertices_m.row(sheet.flat_vertex[sheet.triangles(t, c)]).transpose();
    };
    const Vec2 p = corner(1) - corner(0), q = corner(2) - corner(0);
    for (int c = 0; c < 3; ++c) area[sheet.triangles(t, c)] += std::abs(p.x() * q.y() - p.y() * q.x()) / 6.0;
  }
  return area;
}

}  // namespace

std::vector<PlateNode> plate_nodes(const InflationSetup& setup, const SheetMesh& sheet) {
  std::vector<PlateNode> nodes;
  const double skin_m = setup.layout.skin_sheet.thickness.si(),
               outer_m = setup.layout.outer_sheet.thickness.si();
  for (std::size_t plate = 0; plate < setup.plates.size(); ++plate) {
    const bool on_skin_sheet = setup.plates[plate].faces == PlateFaces::kSkinSheet;
    const auto area =
        side_areas_m2(setup.flat, sheet, on_skin_sheet ? SheetLayer::kOuter : SheetLayer::kSkin);
    for (const int node : on_skin_sheet ? sheet.skin_node : sheet.outer_node)
      nodes.push_back(
          {node, plate, kRigid_pa_per_m * area[node], on_skin_sheet ? 0.5 * skin_m : 0.5 * skin_m + outer_m});
  }
  return nodes;
}

std::vector<double> plate_forces_n(const std::vector<RigidPlate>& plates, const std::vector<PlateNode>& nodes,
                                   const Points3& positions_m) {
  std::vector<double> forces(plates.size(), 0.0);
  for (const PlateNode& at : nodes)
    forces[at.plate] += at.stiffness_n_per_m *
                        std::max(0.0, -at.gap_m(plates[at.plate], positions_m.row(at.node).transpose()));
  return forces;
}

}  // namespace wrapgauge
