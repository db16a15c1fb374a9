// The pressure maximum of a bulge that runs away: its volume is that of the maximum and not one past it.
#include <gtest/gtest.h>

#include "model/inflation/parabola.hpp"
#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

// A square pad of two soft sheets, free, its fused rim held.
InflationSetup free_pad() {
  InflationSetup setup;
  setup.layout.outline_m = small::rectangle(-0.026, -0.026, 0.026, 0.026);
  setup.layout.chambers.push_back({"pad", small::rectangle(-0.020, -0.020, 0.020, 0.020), {}, {}});
  setup.layout.inlets.push_back({"inlet", {0.0, 0.0}});
  setup.layout.skin_sheet = setup.layout.outer_sheet = {"soft", 1.5 * mm};
  FlatMeshOptions options;
  options.edge = options.seam_edge = 8.0 * mm;
  setup.flat = triangulate_layout(setup.layout, std::nullopt, options).value();
  setup.skin_law = setup.outer_law = NeoHookean{30.0 * kPa};
  small::lay_flat(setup);
  const SheetMesh sheet = make_sheet_mesh(setup.flat);
  for (int v = 0; v < setup.flat.vertices_m.rows(); ++v)
    if (sheet.skin_node[v] == sheet.outer_node[v]) setup.held.push_back(v);
  return setup;
}

TEST(LimitPoint, ItsVolumeIsThatOfTheMaximumAndNotPastIt) {
  const InflationSetup setup = free_pad();
  InflationOptions options;
  options.steps = 4;
  const auto path = inflate(setup, {40.0 * kPa}, options);
  ASSERT_TRUE(path) << path.problem().message;
  ASSERT_TRUE(path->limit_point) << "40 kPa were reached";
  const LimitPoint& top = *path->limit_point;
  ASSERT_EQ(top.kind, LimitKind::kRunsAway);
  EXPECT_LT(top.volume, top.past_volume);
  EXPECT_GT(top.pressure, top.past_pressure);
  EXPECT_GE(top.pressure.si(), path->states.back().group_pressure_pa(0));
  // Filled by volume to just there, it stands at the pressure that is told.
  options.steps = 2;
  const auto pressure_at = [&](Volume volume) {
    const auto filled = inflate(setup, {volume}, options);
    EXPECT_TRUE(filled) << (filled ? "" : filled.problem().message);
    return filled ? filled->states.back().group_pressure_pa(0) : 0.0;
  };
  EXPECT_NEAR(pressure_at(top.volume), top.pressure.si(), 0.003 * top.pressure.si());
  const double below = pressure_at(0.85 * top.volume), above = pressure_at(1.15 * top.volume);
  EXPECT_LT(below, top.pressure.si());
  EXPECT_LT(above, top.pressure.si());
}

// 4 - (x - 3)^2 through 1, 2 and 5.
TEST(ParabolaTop, IsTheTopOfTheParabolaThroughThreePoints) {
  const auto [x, y] = parabola_top({1.0, 2.0, 5.0}, {0.0, 3.0, 0.0});
  EXPECT_NEAR(x, 3.0, 1e-12);
  EXPECT_NEAR(y, 4.0, 1e-12);
}

}  // namespace
}  // namespace wrapgauge
