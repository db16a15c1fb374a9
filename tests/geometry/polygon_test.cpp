#include "model/geometry/polygon.hpp"

#include <gtest/gtest.h>

#include <numbers>

#include "model/geometry/stroke.hpp"

namespace wrapgauge {
namespace {

const Polygon kSquare{{0, 0}, {2, 0}, {2, 2}, {0, 2}};

TEST(Polygon, AreaIsSignedByItsTurn) {
  EXPECT_DOUBLE_EQ(signed_area_m2(kSquare), 4.0);
  EXPECT_DOUBLE_EQ(signed_area_m2(Polygon(kSquare.rbegin(), kSquare.rend())), -4.0);
  EXPECT_EQ(signed_area_m2({}), 0.0);
}

TEST(Polygon, AreaFarFromTheOriginKeepsItsDigits) {
  Polygon far = kSquare;
  for (Vec2& p : far) p += Vec2(1e6, -1e6);
  EXPECT_NEAR(signed_area_m2(far), 4.0, 1e-9);
}

TEST(Polygon, PerimeterCountsTheClosingEdge) {
  EXPECT_DOUBLE_EQ(perimeter_m(kSquare), 8.0);
  EXPECT_EQ(perimeter_m({}), 0.0);
}

TEST(Polygon, ContainsFollowsTheEvenOddRule) {
  EXPECT_TRUE(contains(kSquare, {1, 1}));
  EXPECT_FALSE(contains(kSquare, {3, 1}));
  const Polygon notched{{0, 0}, {4, 0}, {4, 4}, {2, 1}, {0, 4}};
  EXPECT_TRUE(contains(notched, {0.5, 2}));
  EXPECT_FALSE(contains(notched, {2, 2}));
  EXPECT_FALSE(contains({}, {0, 0}));
}

TEST(Polygon, CounterClockwiseDropsRepeatedPointsAndTurnsTheLoop) {
  const Polygon loop = counter_clockwise({{0, 0}, {0, 2}, {0, 2}, {2, 2}, {2, 0}, {0, 0}});
  EXPECT_EQ(loop.size(), 4u);
  EXPECT_DOUBLE_EQ(signed_area_m2(loop), 4.0);
}

TEST(Polygon, DistanceToTheLoopIsThatOfTheNearestEdge) {
  EXPECT_DOUBLE_EQ(distance_to_loop_m(kSquare, {1, 0.25}), 0.25);
  EXPECT_DOUBLE_EQ(distance_to_loop_m(kSquare, {5, 6}), 5.0);
}

TEST(Stroke, OfAStraightPathHasTheAreaWidthTimesLength) {
  EXPECT_NEAR(signed_area_m2(stroke({{1, 1}, {4, 5}}, 0.5)), 2.5, 1e-12);
}

TEST(Stroke, OfABentPathHasTheAreaWidthTimesLength) {
  // A mitre gives on the outside what it takes on the inside.
  EXPECT_NEAR(signed_area_m2(stroke({{0, 0}, {10, 0}, {10, 10}, {20, 15}}, 0.5)),
              0.5 * (20 + std::hypot(10, 5)), 1e-12);
}

TEST(Stroke, OfAPointOrWithoutWidthIsEmpty) {
  EXPECT_TRUE(stroke({{1, 1}, {1, 1}}, 1.0).empty());
  EXPECT_TRUE(stroke({{1, 1}, {2, 1}}, 0.0).empty());
}

TEST(CirclePolygon, HasTheCirclesAreaAndShortSides) {
  const Polygon small = circle_polygon({1, 2}, 0.003, 0.004), large = circle_polygon({1, 2}, 0.03, 0.004);
  EXPECT_EQ(small.size(), 12u);
  EXPECT_NEAR(signed_area_m2(small), std::numbers::pi * 9e-6, 1e-15);
  EXPECT_NEAR(signed_area_m2(large), std::numbers::pi * 9e-4, 1e-15);
  EXPECT_LE((large[1] - large[0]).norm(), 0.004);
}

TEST(FlattenedCurves, StayWithinTheToleranceAndOnTheCurve) {
  const double r = 0.02, tolerance = 5e-5;
  const Polygon circle = flattened_ellipse({0, 0}, {r, r}, tolerance);
  for (std::size_t i = 0; i < circle.size(); ++i) {
    EXPECT_NEAR(circle[i].norm(), r, 1e-12);
    EXPECT_GE((0.5 * (circle[i] + circle[(i + 1) % circle.size()])).norm(), r - tolerance);
  }
  // Not finer than needed: twice the chords would stay within a quarter of the tolerance.
  EXPECT_LT(circle.size(), 2 * std::numbers::pi / (2 * std::acos(1 - tolerance / r)) + 4);
}

TEST(FlattenedCurves, RoundedRectangleLosesFourCorners) {
  const double r = 0.008;
  const Polygon loop = flattened_rectangle({0.01, 0.02}, {0.05, 0.07}, r, 5e-5);
  const double exact = 0.05 * 0.07 - (4 - std::numbers::pi) * r * r;
  EXPECT_NEAR(signed_area_m2(loop), exact, 2 * std::numbers::pi * r * 5e-5);
  EXPECT_EQ(flattened_rectangle({0, 0}, {1, 1}, 0.5, 1e-3).size() % 4, 0u);
}

}  // namespace
}  // namespace wrapgauge
