#include "model/body/skin_region.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

const Axis kAxis{Vec3(0, 0, 0.1), Vec3::UnitZ()};

TEST(SkinRegion, NearAPointIsAllWithinTheRadiusAndFadesOutside) {
  const SkinRegion region{"belly", NearPoint{"", {0.05, 0, 0.2}, 20.0 * mm}, false, {}, {}, 10.0 * mm};
  EXPECT_EQ(share_of_region(region, kAxis, {0.05, 0.019, 0.2}), 1.0);
  EXPECT_NEAR(share_of_region(region, kAxis, {0.05, 0.025, 0.2}), 0.5, 1e-9);
  EXPECT_EQ(share_of_region(region, kAxis, {0.05, 0.031, 0.2}), 0.0);
}

TEST(SkinRegion, BetweenStationsCountsFromTheDistalEndAndRoundTheAxis) {
  const SkinRegion region{"front", BetweenStations{20.0 * mm, 60.0 * mm, 330.0, 390.0}, true, {}, {},
                          Length()};
  EXPECT_EQ(distance_outside(region, kAxis, {0.04, 0, 0.13}), Length());
  EXPECT_EQ(distance_outside(region, kAxis, {0.04, 0.02, 0.13}), Length());  // 26.6 degrees
  EXPECT_NEAR(distance_outside(region, kAxis, {0.04, 0, 0.17}) / mm, 10.0, 1e-9);
  EXPECT_NEAR(distance_outside(region, kAxis, {0.0, 0.04, 0.13}) / mm, 40.0 * 60.0 * 3.14159265 / 180.0,
              1e-4);
  EXPECT_EQ(share_of_region(region, kAxis, {0.0, 0.04, 0.13}), 0.0);
}

TEST(SkinRegion, ByDistanceIsLinearBetweenTheDistancesGivenAndHoldsAtTheEnds) {
  SkinRegion region{"shin", NearPoint{"", {0.05, 0, 0.2}, 40.0 * mm}, false, {}, {}, Length()};
  region.by_distance = {{10.0 * mm, 4.0 * mm, 1.0}, {20.0 * mm, 8.0 * mm, 3.0}, {40.0 * mm, 28.0 * mm, 2.0}};
  const auto depth_mm = [&](double distance_m) {
    return *tissue_depth_at(region, {0.05, distance_m, 0.2}) / mm;
  };
  EXPECT_NEAR(depth_mm(0.0), 4.0, 1e-9);
  EXPECT_NEAR(depth_mm(0.015), 6.0, 1e-9);
  EXPECT_NEAR(depth_mm(0.025), 13.0, 1e-9);
  EXPECT_NEAR(depth_mm(0.040), 28.0, 1e-9);
  EXPECT_NEAR(depth_mm(0.060), 28.0, 1e-9);
  EXPECT_NEAR(*stiffness_factor_at(region, {0.05, 0.03, 0.2}), 2.5, 1e-9);
  region.by_distance = {{Length(), {}, 1.0}, {20.0 * mm, {}, 2.0}};
  EXPECT_FALSE(tissue_depth_at(region, {0.05, 0.01, 0.2}));
}

}  // namespace
}  // namespace wrapgauge
