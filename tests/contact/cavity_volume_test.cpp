#include "model/contact/cavity_volume.hpp"

#include <gtest/gtest.h>

#include "hand_made.hpp"

namespace wrapgauge {
namespace {

// Two chambers of one group side by side; the left one is blown up twice as high as the right.
TEST(ChamberVolumes, ShareTheGroupsVolumeAsTheSheetsDo) {
  hand_made::Worn worn = hand_made::flat_pad(8, 0.04);
  FlatMesh& flat = worn.setup.flat;
  for (std::size_t t = 0; t < flat.regions.size(); ++t) {
    const auto row = flat.triangles.row(static_cast<Eigen::Index>(t));
    const double x =
        (flat.vertices_m(row[0], 0) + flat.vertices_m(row[1], 0) + flat.vertices_m(row[2], 0)) / 3.0;
    flat.regions[t].part = x < 0.02 ? 0 : 1;
  }
  flat.chamber_group = {GroupId(0), GroupId(0)};
  EquilibriumState state = hand_made::untouched(flat, worn.path.sheet);
  state.group_volume_m3[0] = 30e-6;
  for (int v = 0; v < flat.vertices_m.rows(); ++v) {
    const double x = flat.vertices_m(v, 0), y = flat.vertices_m(v, 1);
    const double tent = std::min(y, 0.04 - y);
    // Zero on the line between them, so that each closes by itself.
    const double height = (x < 0.02 ? 2.0 * std::min(x, 0.02 - x) : std::min(x - 0.02, 0.04 - x)) * tent;
    state.positions_m(worn.path.sheet.outer_node[v], 2) = 10.0 * height;
  }
  const std::vector<Volume> volumes = chamber_volumes(worn.setup, worn.path.sheet, state);
  ASSERT_EQ(volumes.size(), 2u);
  EXPECT_NEAR(volumes[0] / mL, 20.0, 1e-9);
  EXPECT_NEAR(volumes[1] / mL, 10.0, 1e-9);
}

TEST(ChamberVolumes, OfFlatSheetsAreNothing) {
  const hand_made::Worn worn = hand_made::flat_pad(4, 0.04);
  const std::vector<Volume> volumes = chamber_volumes(worn.setup, worn.path.sheet, worn.path.states.back());
  EXPECT_EQ(volumes.at(0).si(), 0.0);
}

}  // namespace
}  // namespace wrapgauge
