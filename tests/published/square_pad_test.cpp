// Square pad 60 x 60 mm at 2 kPa against a membrane solved apart (square_membrane.cpp); against a solid in
// solid_check_test.cpp. The free-edged pad between two plates is not here: the outer sheet meets no body in
// this program.
#include "tests/published/square_fixture.hpp"
#include "tests/published/square_membrane.hpp"

namespace wrapgauge::published {
namespace {

TEST(SquarePad, RisesAsTheReference) {
  const Source pad{"Square pad 60 × 60 mm, all edges clamped, 2 kPa",
                   "neo-Hookean membrane on 10, 20 and 40 cells, extrapolated",
                   "derived",
                   {},
                   "square_membrane.cpp"};
  const ExtrapolatedSquare reference = extrapolated_square_membrane(2.0 * 30.0 / (30.0 * 1.5));
  EXPECT_NEAR(reference.limit.rise, reference.coarse_limit.rise, 1e-5) << "the cells are not fine enough";
  expect_derived(22.294, 30.0 * reference.limit.rise, 3e-5);
  expect_derived(45.424, 27.0 * reference.limit.volume, 3e-5);
  const InflationSetup setup = square_setup();
  const auto path = inflate(setup, {2.0 * kPa}, membrane_only(2));
  ASSERT_TRUE(path) << path.problem().message;
  const EquilibriumState& state = path->states.back();
  expect_within(pad, "membrane: centre rise, mm", height_m(*path, state) / 1e-3, 22.294, 0.02);
  expect_within(pad, "membrane: volume under one sheet, mL", bulge_volume_m3(setup.flat, *path, state) / 1e-6,
                45.424, 0.02);
}

}  // namespace
}  // namespace wrapgauge::published
