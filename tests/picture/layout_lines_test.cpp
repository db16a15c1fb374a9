#include "app/picture/layout_lines.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

// A unit square of two triangles.
struct Square {
  Points2 points{{0.0, 0.0}, {1.0, 0.0}, {1.0, 1.0}, {0.0, 1.0}};
  Triangles triangles{{0, 1, 2}, {0, 2, 3}};
};

TEST(LayoutLines, TheLevelOfALinearFieldIsTheStraightLineThere) {
  const Square square;
  const Eigen::VectorXd x = square.points.col(0);
  const auto lines = level_lines(square.triangles, x, 0.3);
  ASSERT_EQ(lines.size(), 2U);
  double length = 0.0;
  for (const LayoutLine& line : lines) {
    const Vec2 from = line[0].on(square.points), to = line[1].on(square.points);
    EXPECT_NEAR(from.x(), 0.3, 1e-12);
    EXPECT_NEAR(to.x(), 0.3, 1e-12);
    length += (to - from).norm();
  }
  EXPECT_NEAR(length, 1.0, 1e-12);
}

TEST(LayoutLines, TheHatchLiesOnlyWhereTheLoadIsAboveOneAndEndsThere) {
  const Square square;
  const Eigen::VectorXd load = 2.0 * square.points.col(0);  // 1 at x = 0.5
  const auto lines = hatch_lines(square.triangles, square.points, load, 0.02);
  ASSERT_GT(lines.size(), 20U);
  double least = 1.0, length = 0.0;
  for (const LayoutLine& line : lines) {
    const Vec2 from = line[0].on(square.points), to = line[1].on(square.points);
    least = std::min({least, from.x(), to.x()});
    length += (to - from).norm();
  }
  EXPECT_NEAR(least, 0.5, 1e-9);
  EXPECT_NEAR(length * 0.02, 0.5, 0.02);  // lines times their spacing: the hatched area
}

TEST(LayoutLines, NothingIsHatchedWhereNoLimitIsSet) {
  const Square square;
  const Eigen::VectorXd none = Eigen::VectorXd::Zero(4);
  EXPECT_TRUE(hatch_lines(square.triangles, square.points, none, 0.02).empty());
}

}  // namespace
}  // namespace wrapgauge
