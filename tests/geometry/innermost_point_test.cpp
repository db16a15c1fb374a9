#include "model/geometry/innermost_point.hpp"

#include <gtest/gtest.h>

#include "tests/geometry/open_ring.hpp"

namespace wrapgauge {
namespace {

TEST(InnermostPoint, OfALongRectangleIsItsMiddle) {
  const Polygon box{{1.0, 2.0}, {9.0, 2.0}, {9.0, 4.0}, {1.0, 4.0}};
  EXPECT_LT((innermost_point_m(box) - Vec2(5.0, 3.0)).norm(), 1e-12);
}

TEST(InnermostPoint, OfARingLiesHalfwayBetweenItsEdges) {
  const Polygon ring = open_ring(0.03, 0.05, 300.0);
  const Vec2 point = innermost_point_m(ring);
  EXPECT_TRUE(contains(ring, point));
  EXPECT_GE(distance_to_loop_m(ring, point), 0.01 - 0.01 * 0.1);
}

// Legs 4 and 1 wide: deepest where the wide one has its middle line, by hand 2 from three sides.
TEST(InnermostPoint, OfAnAngleLiesInItsWideLeg) {
  const Polygon angle{{0.0, 0.0}, {20.0, 0.0}, {20.0, 1.0}, {4.0, 1.0}, {4.0, 12.0}, {0.0, 12.0}};
  EXPECT_GE(distance_to_loop_m(angle, innermost_point_m(angle)), 2.0 - 0.2);
  EXPECT_LT(innermost_point_m(angle).x(), 4.0);
}

TEST(InnermostPoint, OfAThinRingLiesOnIt) {
  const Polygon ring = open_ring(0.0495, 0.05, 300.0);
  EXPECT_TRUE(contains(ring, innermost_point_m(ring)));
}

TEST(InnermostPoint, OfALoopThatEnclosesNothingEnds) {
  EXPECT_EQ(innermost_point_m({{0.0, 0.0}, {2.0, 0.0}, {1.0, 0.0}}), Vec2(1.0, 0.0));
}

TEST(InnermostPoint, OfTooFewPointsIsZero) {
  EXPECT_EQ(innermost_point_m({{1.0, 1.0}, {2.0, 1.0}}), Vec2(0.0, 0.0));
}

}  // namespace
}  // namespace wrapgauge
