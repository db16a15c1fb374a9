#include "model/inflation/rigid_plates.hpp"

#include <gtest/gtest.h>

#include <numeric>

#include "tests/published/disc_fixture.hpp"

namespace wrapgauge {
namespace {

InflationOptions closely() {
  InflationOptions options;
  options.residual_tolerance = 1e-4;
  options.closed_state = false;
  options.steps = 2;
  return options;
}

// 60 x 20 mm of 3 mm at 1070 kg/m3: 0.0378 N.
TEST(RigidPlates, ATableTakesWhatTheDeviceWeighs) {
  InflationSetup setup = small::plain_sheet(0.060, 0.020, 0.003);
  const double weight_pa = 9.81 * 1070.0 * 0.0015;
  setup.skin_weight_pa = setup.outer_weight_pa = Vec3(0.0, 0.0, -weight_pa);
  setup.start_m.col(2).setConstant(0.5 * setup.layout.skin_sheet.thickness.si());
  setup.plates = {{PlateFaces::kSkinSheet, Vec3::Zero(), Vec3::UnitZ()}};
  const auto path = inflate(setup, {}, closely());
  ASSERT_TRUE(path) << path.problem().message;
  EXPECT_NEAR(path->states.back().plate_force_n.at(0), 2.0 * weight_pa * 0.060 * 0.020, 1e-4);
}

// The bulge of the published disc, against the plate of its reference and against ours.
TEST(RigidPlates, PressAsARigidBodyDoes) {
  using namespace published;
  const InflationSetup free = disc_setup(NeoHookean{Pressure(kDiscShear)}, 0.004);
  InflationSetup on_body = free, on_plate = free;
  press_on(on_body, std::make_shared<PlateBelow>(-0.006), kRigidPaPerM);
  on_plate.plates = {{PlateFaces::kSkinSheet, Vec3(0.0, 0.0, -0.006 - 0.5 * kDiscThickness), Vec3::UnitZ()}};
  const auto body = inflate(on_body, {disc_load(1.0)}, membrane_only(2)),
             plate = inflate(on_plate, {disc_load(1.0)}, membrane_only(2));
  ASSERT_TRUE(body && plate);
  const double reference = contact_force_n(body->states.back());
  EXPECT_GT(reference, 1.0);
  EXPECT_NEAR(plate->states.back().plate_force_n.at(0) / reference, 1.0, 2e-3);
}

// Without weight nothing else holds the device, so both take the same.
TEST(RigidPlates, TableAndPlateTakeTheSameFromADeviceBetweenThem) {
  using namespace published;
  InflationSetup setup = disc_setup(NeoHookean{Pressure(kDiscShear)}, 0.004);
  setup.held.clear();
  setup.outer_law = NeoHookean{Pressure(2.0 * kDiscShear)};
  setup.plates = {{PlateFaces::kSkinSheet, Vec3(0.0, 0.0, -0.005), Vec3::UnitZ()},
                  {PlateFaces::kOuterSheet, Vec3(0.0, 0.0, 0.005), -Vec3::UnitZ()}};
  const auto path = inflate(setup, {1.0 * kPa}, closely());
  ASSERT_TRUE(path) << path.problem().message;
  const std::vector<double>& forces = path->states.back().plate_force_n;
  EXPECT_GT(forces.at(0), 0.2);
  EXPECT_NEAR(forces.at(0) / forces.at(1), 1.0, 0.01);
}

}  // namespace
}  // namespace wrapgauge
