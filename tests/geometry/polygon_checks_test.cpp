#include "model/geometry/polygon_checks.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

Polygon square(double x, double y, double side) {
  return {{x, y}, {x + side, y}, {x + side, y + side}, {x, y + side}};
}

TEST(SelfCrossing, OfABowTieIsItsMiddle) {
  const auto p = self_crossing({{0, 0}, {2, 2}, {2, 0}, {0, 2}});
  ASSERT_TRUE(p);
  EXPECT_NEAR((*p - Vec2(1, 1)).norm(), 0.0, 1e-12);
}

TEST(SelfCrossing, IsFoundWhereALoopTouchesItselfOrRunsBack) {
  EXPECT_TRUE(self_crossing({{0, 0}, {4, 0}, {4, 4}, {2, 0}, {0, 4}}));
  EXPECT_TRUE(self_crossing({{0, 0}, {4, 0}, {2, 0}, {2, 2}}));
}

TEST(SelfCrossing, IsNotFoundInASimpleLoop) {
  EXPECT_FALSE(self_crossing(square(0, 0, 1)));
  EXPECT_FALSE(self_crossing({{0, 0}, {4, 0}, {4, 4}, {2, 1}, {0, 4}}));
}

TEST(ClosestPlaces, OfTwoSquaresIsTheGapBetweenTheirEdges) {
  const ClosestPlaces places = closest_places(square(0, 0, 1), square(1.5, 0.5, 1));
  EXPECT_DOUBLE_EQ(places.distance_m, 0.5);
  EXPECT_DOUBLE_EQ(places.on_first.x(), 1.0);
  EXPECT_DOUBLE_EQ(places.on_second.x(), 1.5);
  EXPECT_EQ(closest_places(square(0, 0, 1), square(0.5, 0.5, 1)).distance_m, 0.0);
}

TEST(ClosestPlaces, OfALoopInsideAnotherIsTheGapToItsWall) {
  EXPECT_DOUBLE_EQ(closest_places(square(0.25, 0.3, 0.5), square(0, 0, 1)).distance_m, 0.2);
}

TEST(CommonArea, OfTwoSquaresIsTheirOverlap) {
  EXPECT_NEAR(common_area_m2(square(0, 0, 2), square(1, 1, 2)), 1.0, 1e-9);
  EXPECT_NEAR(common_area_m2(square(0, 0, 2), square(0.5, 0.5, 1)), 1.0, 1e-9);
  EXPECT_NEAR(common_area_m2(square(0, 0, 1), square(1, 0, 1)), 0.0, 1e-12);
  EXPECT_EQ(common_area_m2(square(0, 0, 1), square(3, 0, 1)), 0.0);
}

TEST(FarthestOutside, IsTheDepthOfTheOverhang) {
  const auto outside = farthest_outside(square(0.5, 0.25, 0.8), square(0, 0, 1));
  ASSERT_TRUE(outside);
  EXPECT_NEAR(outside->distance_m, std::hypot(0.3, 0.05), 1e-12);
  EXPECT_FALSE(farthest_outside(square(0, 0, 1), square(0, 0, 1)));
  EXPECT_FALSE(farthest_outside(square(0.5, 0.5, 0.5), square(0, 0, 1)));
}

TEST(FarthestOutside, SeesANotchOfTheOuterLoopThatTheInnerOneCovers) {
  const Polygon notched{{0, 0}, {4, 0}, {4, 4}, {2, 1}, {0, 4}};
  EXPECT_TRUE(farthest_outside({{0.5, 0.5}, {3.5, 0.5}, {3.5, 1.5}, {0.5, 1.5}}, notched));
}

}  // namespace
}  // namespace wrapgauge
