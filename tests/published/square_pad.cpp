// Square pad 60 x 60 mm at 2 kPa. The free-edged pad between two plates is not here: the outer sheet meets no
// body in this program.
#include "tests/published/square_fixture.hpp"

namespace wrapgauge::published {
namespace {

TEST(SquarePad, RisesAsTheReference) {
  const Source pad{"Square pad 60 × 60 mm, all edges clamped, 2 kPa",
                   "membrane series to 40 cells and 3-D solid, solved apart from this program (derived)"};
  const InflationSetup setup = square_setup();
  const auto path = inflate(setup, {2.0 * kPa}, membrane_only(2));
  ASSERT_TRUE(path) << path.problem().message;
  const EquilibriumState& state = path->states.back();
  expect_within(pad, "membrane: centre rise, mm", height_m(*path, state) / 1e-3, 22.29, 0.02);
  expect_within(pad, "membrane: volume under one sheet, mL", bulge_volume_m3(setup.flat, *path, state) / 1e-6,
                45.4, 0.02);
  expect_within(pad, "membrane against the 3-D solid: centre rise, mm", height_m(*path, state) / 1e-3, 21.86,
                0.05);
}

}  // namespace
}  // namespace wrapgauge::published
