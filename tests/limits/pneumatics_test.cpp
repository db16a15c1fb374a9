#include "model/limits/pneumatics.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace wrapgauge {
namespace {

const VolumeCurve kSoft{{Pressure(), Volume()}, {10.0 * kPa, 50.0 * mL}};  // 5 mL/kPa

// Boyle at 101.325 kPa: 20 mL pushed into 5 mL of dead volume and 5 mL/kPa; into a rigid 100 mL, 20.265 kPa.
TEST(ClosedAir, FollowsBoyle) {
  EXPECT_NEAR(sealed_gauge(kSoft, 5.0 * mL, kAtmosphere * (25.0 * mL)) / kPa, 3.81842, 1e-5);
  EXPECT_NEAR(sealed_gauge(rigid_volume(100.0 * mL), Volume(), kAtmosphere * (120.0 * mL)) / kPa, 20.265,
              1e-6);
}

// Rigid, 20 to 33 C: 101.325 x 13 / 293.15 = 4.493 kPa. To 75 kPa of cabin air: 26.325 kPa.
TEST(ClosedAir, InARigidChamberWarmsAndClimbsAsTheHandSays) {
  const VolumeCurve rigid = rigid_volume(100.0 * mL);
  EXPECT_NEAR(sealed_gauge_after(rigid, Volume(), Pressure(), 20.0, 33.0) / kPa, 101.325 * 13.0 / 293.15,
              1e-6);
  EXPECT_NEAR(sealed_gauge_after(rigid, Volume(), Pressure(), 20.0, 20.0, 75.0 * kPa) / kPa, 26.325, 1e-6);
}

// (101.325 + p)(5 p) = (101.325 + 4) x 20 x 306.15 / 293.15 mL kPa: p = 4.170 kPa, a root found by hand.
TEST(ClosedAir, InASoftChamberRisesMuchLess) {
  const double right = 105.325 * 20.0 * 306.15 / 293.15;
  const double root = 0.5 * (-101.325 + std::sqrt(101.325 * 101.325 + 4.0 * right / 5.0));
  EXPECT_NEAR(sealed_gauge_after(kSoft, Volume(), 4.0 * kPa, 20.0, 33.0) / kPa, root, 1e-6);
  EXPECT_LT(root, 4.5);
}

TEST(ClosedAir, LeftAloneStaysAsItIs) {
  EXPECT_NEAR(sealed_gauge_after(kSoft, 3.0 * mL, 4.0 * kPa, 20.0, 20.0) / kPa, 4.0, 1e-9);
}

// 1 m of 2 mm bore: 4.6e7 Pa s/m3; 1 L/min through it drops 0.77 kPa, Reynolds number about 700.
TEST(Tube, ResistsAsHagenAndPoiseuilleSay) {
  const Tubing tube{1.0 * metre, 2.0 * mm};
  EXPECT_NEAR(tube_resistance(tube), 4.609e7, 1e4);
  EXPECT_NEAR(tube_resistance(tube) * 1e-3 / 60.0 / 1e3, 0.768, 1e-3);
  EXPECT_NEAR(tube_resistance({1.0 * metre, 1.0 * mm}), 7.375e8, 1e5);
  const double reynolds = vent_time(rigid_volume(100.0 * mL), tube, 0.768 * kPa, 0.5 * kPa).reynolds;
  EXPECT_NEAR(reynolds, 703.0, 2.0);
}

// A rigid 100 mL has the time constant R V / P0 = 0.0455 s: from 4 to 0.5 kPa, ln 8 of it.
TEST(VentTime, OfARigidChamberIsAnExponentialDecay) {
  const Tubing tube{1.0 * metre, 2.0 * mm};
  const double constant_s = tube_resistance(tube) * 100e-6 / 101325.0;
  EXPECT_NEAR(constant_s, 0.0455, 1e-4);
  EXPECT_NEAR(vent_time(rigid_volume(100.0 * mL), tube, 4.0 * kPa, 0.5 * kPa).time / second,
              constant_s * std::log(8.0), 1e-9);
}

// 5 mL/kPa: R b (ln 8 + 2 x 3.5 / 101.325) = 4.609e7 x 5e-9 x 2.1485 = 0.495 s; a 1 mm bore takes 16 times as
// long.
TEST(VentTime, OfASoftChamberFollowsItsOwnVolumeCurve) {
  const double wide = vent_time(kSoft, {1.0 * metre, 2.0 * mm}, 4.0 * kPa, 0.5 * kPa).time / second;
  EXPECT_NEAR(wide, 0.495, 1e-3);
  EXPECT_NEAR(vent_time(kSoft, {1.0 * metre, 1.0 * mm}, 4.0 * kPa, 0.5 * kPa).time / second, 16.0 * wide,
              1e-6);
  VolumeCurve split{{Pressure(), Volume()}, {2.0 * kPa, 10.0 * mL}, {10.0 * kPa, 50.0 * mL}};
  EXPECT_NEAR(vent_time(split, {1.0 * metre, 2.0 * mm}, 4.0 * kPa, 0.5 * kPa).time / second, wide, 1e-9);
}

TEST(VentTime, IsNothingWhenThereIsNothingToLetOut) {
  EXPECT_EQ(vent_time(kSoft, {1.0 * metre, 2.0 * mm}, 0.4 * kPa, 0.5 * kPa).time, Time());
}

// 50 N on a bore of 28 mm, as of a 60 mL syringe: 81 kPa.
TEST(Syringe, CanPushFarBeyondAnyLimit) {
  EXPECT_NEAR(syringe_pressure({60.0 * mL, 28.0 * mm, 50.0 * newton}) / kPa, 81.2, 0.05);
}

TEST(VolumeCurve, LeavesOutPointsThatDoNotRise) {
  LoadPath path;
  for (const auto& [pressure_pa, volume_m3] :
       {std::pair{-10.0, 0.0}, {1e3, 5e-6}, {0.9e3, 6e-6}, {2e3, 12e-6}}) {
    EquilibriumState state;
    state.group_pressure_pa = Eigen::VectorXd::Constant(1, pressure_pa);
    state.group_volume_m3 = Eigen::VectorXd::Constant(1, volume_m3);
    path.states.push_back(state);
  }
  const VolumeCurve curve = volume_curve(path, GroupId(0));
  ASSERT_EQ(curve.size(), 3u);
  EXPECT_NEAR(volume_at(curve, 1.5 * kPa) / mL, 8.5, 1e-9);
  EXPECT_NEAR(volume_at(curve, 3.0 * kPa) / mL, 19.0, 1e-9);  // 7 mL/kPa beyond the end
}

}  // namespace
}  // namespace wrapgauge
