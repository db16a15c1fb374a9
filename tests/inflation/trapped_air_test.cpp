// Air pushed in and closed off, against Boyle by hand: p = p0 (n / V - 1), n the air at room pressure that is
// in there, V what chamber, tubing and syringe hold.
#include <gtest/gtest.h>

#include "model/inflation/cavity_load.hpp"
#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

constexpr double kRoom_pa = 101325.0;

// 70 mL of air in 45 mL of chamber and 20 mL beside it: 101.325 (70 / 65 - 1) = 7.794 kPa.
TEST(TrappedAir, HasThePressureThatBoyleSays) {
  const CavityLoad load = CavityLoad::trapped_air(70e-6, 20e-6);
  EXPECT_NEAR(load.pressure_at(45e-6), kRoom_pa * (70.0 / 65.0 - 1.0), 1e-6);
  EXPECT_NEAR(load.pressure_at(50e-6), 0.0, 1e-6);  // room enough for all of it
  EXPECT_LT(load.pressure_at(60e-6), 0.0);
}

// What was in the chamber and in the dead volume before anything was pushed in is in there as well.
TEST(TrappedAir, CountsTheAirThatWasInChamberAndDeadVolumeBeforeThePush) {
  const InflationSetup setup = small::closed_cuff(0.3);
  InflationOptions options;
  options.steps = 2;
  const Volume dead = 20.0 * mL, pushed = 12.0 * mL;
  const auto path = inflate(setup, {TrappedAir{pushed, dead}}, options);
  ASSERT_TRUE(path) << path.problem().message;
  ASSERT_FALSE(path->limit_point);
  ASSERT_EQ(path->states.size(), 3u);
  const double before_m3 = path->states.front().group_volume_m3(0);
  for (std::size_t step = 1; step <= 2; ++step) {
    const EquilibriumState& state = path->states[step];
    const double air_m3 = before_m3 + dead.si() + 0.5 * static_cast<double>(step) * pushed.si();
    const double by_hand_pa = kRoom_pa * (air_m3 / (state.group_volume_m3(0) + dead.si()) - 1.0);
    EXPECT_NEAR(state.group_pressure_pa(0), by_hand_pa, 1e-3 * by_hand_pa) << "step " << step;
    EXPECT_GT(by_hand_pa, 100.0);
  }
}

// The sheet's own curve of pressure over volume has to meet Boyle's: the same shape as by that pressure
// alone.
TEST(TrappedAir, ComesToTheShapeThatItsPressureGives) {
  const InflationSetup setup = small::closed_cuff(0.0);
  InflationOptions options;
  options.steps = 2;
  const auto by_air = inflate(setup, {TrappedAir{12.0 * mL, 20.0 * mL}}, options);
  ASSERT_TRUE(by_air) << by_air.problem().message;
  const EquilibriumState& filled = by_air->states.back();
  const auto by_pressure = inflate(setup, {Pressure(filled.group_pressure_pa(0))}, options);
  ASSERT_TRUE(by_pressure) << by_pressure.problem().message;
  EXPECT_NEAR(by_pressure->states.back().group_volume_m3(0), filled.group_volume_m3(0),
              0.01 * filled.group_volume_m3(0));
}

TEST(TrappedAir, WithMoreDeadVolumePressesLess) {
  const InflationSetup setup = small::closed_cuff(0.3);
  InflationOptions options;
  options.steps = 1;
  const auto pressure_with = [&](Volume dead) {
    const auto path = inflate(setup, {TrappedAir{12.0 * mL, dead}}, options);
    EXPECT_TRUE(path) << (path ? "" : path.problem().message);
    return path ? path->states.back().group_pressure_pa(0) : 0.0;
  };
  EXPECT_LT(pressure_with(200.0 * mL), 0.97 * pressure_with(2.0 * mL));
}

}  // namespace
}  // namespace wrapgauge
