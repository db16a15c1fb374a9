#include "model/casting/open_edges.hpp"

#include <array>
#include <cmath>
#include <numbers>

#include "model/casting/free_circle.hpp"
#include "model/geometry/stroke.hpp"
#include "tables.hpp"

namespace wrapgauge {
namespace {

Polygon box(double x, double y, double width, double height) {
  return {{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}};
}

LayoutShapes two_joined_chambers() {
  LayoutShapes shapes;
  shapes.outline_m = box(0, 0, 0.2, 0.1);
  shapes.chambers = {{box(0.02, 0.02, 0.06, 0.06), {}}, {box(0.1, 0.02, 0.06, 0.06), {}}};
  shapes.channels_m = {box(0.07, 0.045, 0.04, 0.01)};  // 20 mm of it between the chambers
  return shapes;
}

TEST(OpenOutlines, JoinedChambersHaveOneAndNoLineCrossesTheChannelsMouths) {
  const auto loops = open_outlines(two_joined_chambers());
  ASSERT_EQ(loops.size(), 1u);
  EXPECT_NEAR(signed_area_m2(loops[0]), 2 * 36e-4 + 2e-4, 1e-12);
  EXPECT_NEAR(perimeter_m(loops[0]), 2 * 0.24 - 2 * 0.01 + 2 * 0.02, 1e-12);
  for (const double x : {0.08, 0.1}) EXPECT_GT(distance_to_loop_m(loops[0], {x, 0.05}), 4e-3);
}

TEST(OpenOutlines, ChambersOnTheirOwnKeepTheirs) {
  LayoutShapes shapes = two_joined_chambers();
  shapes.channels_m.clear();
  EXPECT_EQ(open_outlines(shapes).size(), 2u);
}

// A ring with a chamber in its hole: the ring's edge inside runs the other way.
TEST(OpenOutlines, AHoleWithAChamberInItIsALoopOfItsOwn) {
  LayoutShapes shapes;
  shapes.outline_m = box(0, 0, 0.1, 0.1);
  shapes.chambers = {
      {box(0.01, 0.01, 0.08, 0.08), {box(0.03, 0.03, 0.04, 0.04), box(0.014, 0.014, 4e-3, 4e-3)}},
      {box(0.04, 0.04, 0.02, 0.02), {}}};
  double area = 0.0;
  const auto loops = open_outlines(shapes);
  for (const Polygon& loop : loops) area += signed_area_m2(loop);
  EXPECT_EQ(loops.size(), 3u);  // the spot is an inset seam and is left out
  EXPECT_NEAR(area, 64e-4 - 16e-4 + 4e-4, 1e-12);
}

// Past the mouth of a narrow channel, along one wall of a chamber, there is no weld to measure.
TEST(NarrowWelds, AreNotMeasuredAlongAWall) {
  LayoutShapes shapes = two_joined_chambers();
  const auto any = [](const Weld&) { return true; };
  for (const double width : {1e-3, 2e-3, 5e-3}) {
    shapes.channels_m = {box(0.07, 0.05 - 0.5 * width, 0.04, width)};
    EXPECT_TRUE(narrow_welds(shapes, 0.0199, any).empty()) << width;
    EXPECT_FALSE(narrow_welds(shapes, 0.0201, any).empty()) << width;  // rims and the seam between
  }
}

TEST(NarrowNecks, AreNotMeasuredAlongAWallWithASlitInIt) {
  const Polygon slit{{0, 0},        {0.06, 0},    {0.06, 0.06}, {0.031, 0.06},
                     {0.031, 0.02}, {0.03, 0.02}, {0.03, 0.06}, {0, 0.06}};
  EXPECT_TRUE(narrow_necks(slit, 0.012).empty());
  EXPECT_EQ(narrow_necks(slit, 0.0201).size(), 1u);  // below the slit
}

TEST(FreeCircle, IsAsWideAsARectangle) {
  const FreeCircle circle = largest_free_circle(box(0, 0, 0.08, 0.05), {});
  EXPECT_NEAR(circle.radius_m, 0.025, 1e-9);
  EXPECT_NEAR(circle.centre_m.y(), 0.025, 1e-9);
}

// Between two walls and the spot: sqrt(2) (a / 2 - r) = r + s.
TEST(FreeCircle, LiesInTheCornerOfASquareWithASpot) {
  const double a = 0.1, s = 0.01;
  const FreeCircle circle = largest_free_circle(box(0, 0, a, a), {circle_polygon({0.05, 0.05}, s, 2e-4)});
  EXPECT_NEAR(circle.radius_m, (a / std::numbers::sqrt2 - s) / (1.0 + std::numbers::sqrt2), 1e-4);
}

TEST(FreeCircle, IsARingsWidth) {
  const FreeCircle circle =
      largest_free_circle(circle_polygon({0, 0}, 0.05, 5e-4), {circle_polygon({0, 0}, 0.03, 5e-4)});
  EXPECT_NEAR(circle.radius_m, 0.01, 5e-5);
}

TEST(NarrowNecks, AreFoundBetweenTwoWideParts) {
  const auto dumbbell = [](double neck) {
    const double low = 0.5 * (0.04 - neck), high = 0.5 * (0.04 + neck);
    return Polygon{{0, 0},       {0.04, 0},    {0.04, low},  {0.05, low},  {0.05, 0},    {0.09, 0},
                   {0.09, 0.04}, {0.05, 0.04}, {0.05, high}, {0.04, high}, {0.04, 0.04}, {0, 0.04}};
  };
  const auto necks = narrow_necks(dumbbell(0.0025), 0.003);
  ASSERT_EQ(necks.size(), 1u);
  EXPECT_NEAR(necks[0].distance_m, 0.0025, 1e-12);
  EXPECT_NEAR(0.5 * (necks[0].on_first + necks[0].on_second).x(), 0.045, 5.1e-3);
  EXPECT_TRUE(narrow_necks(dumbbell(0.0031), 0.003).empty());
}

// Three wide parts in a row.
Polygon three_parts(double left, double right) {
  const auto low = [](double neck) { return 0.02 - 0.5 * neck; };
  const auto high = [](double neck) { return 0.02 + 0.5 * neck; };
  return {{0, 0},       {0.04, 0},          {0.04, low(left)},   {0.05, low(left)},   {0.05, 0},
          {0.09, 0},    {0.09, low(right)}, {0.10, low(right)},  {0.10, 0},           {0.14, 0},
          {0.14, 0.04}, {0.10, 0.04},       {0.10, high(right)}, {0.09, high(right)}, {0.09, 0.04},
          {0.05, 0.04}, {0.05, high(left)}, {0.04, high(left)},  {0.04, 0.04},        {0, 0.04}};
}

TEST(NarrowNecks, AreAllNamedTheNarrowestFirst) {
  const auto expect = [](const Polygon& loop, std::array<double, 2> widths_m, std::array<double, 2> x_m) {
    const auto necks = narrow_necks(loop, 0.003);
    ASSERT_EQ(necks.size(), 2u);
    for (std::size_t k = 0; k < 2; ++k) {
      EXPECT_NEAR(necks[k].distance_m, widths_m[k], 1e-12);
      EXPECT_NEAR(0.5 * (necks[k].on_first + necks[k].on_second).x(), x_m[k], 5.1e-3);
    }
  };
  expect(three_parts(0.0025, 0.002), {0.002, 0.0025}, {0.095, 0.045});
  expect(three_parts(0.002, 0.0025), {0.002, 0.0025}, {0.045, 0.095});
  EXPECT_EQ(narrow_necks(three_parts(0.0031, 0.0025), 0.003).size(), 1u);
}

TEST(NarrowNecks, AreNoCorners) {
  EXPECT_TRUE(narrow_necks(box(0, 0, 0.05, 0.05), 0.003).empty());
  EXPECT_TRUE(narrow_necks({{0, 0}, {0.05, -0.02}, {0.05, 0.02}}, 0.003).empty());  // a tip of 44 degrees
  EXPECT_TRUE(narrow_necks(flattened_rectangle({0, 0}, {0.05, 0.01}, 0.005, 5e-5), 0.003).empty());
}

}  // namespace
}  // namespace wrapgauge
