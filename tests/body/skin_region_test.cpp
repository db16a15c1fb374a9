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

}  // namespace
}  // namespace wrapgauge
