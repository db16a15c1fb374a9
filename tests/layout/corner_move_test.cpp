#include "model/layout/corner_move.hpp"

#include <gtest/gtest.h>

#include "model/geometry/stroke.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {
namespace {

// 60 x 40 mm with corners of 8 mm.
Polygon rounded_rectangle() {
  return flattened_rectangle(Vec2::Zero(), {0.06, 0.04}, 0.008, kFlattening);
}

// The point nearest to the middle of the rounding at the upper right.
std::size_t in_upper_right(const Polygon& loop) {
  std::size_t best = 0;
  for (std::size_t i = 0; i < loop.size(); ++i)
    if (loop[i].sum() > loop[best].sum()) best = i;
  return best;
}

double most_turn_deg(const Polygon& loop) {
  double most = 0.0;
  for (std::size_t i = 0; i < loop.size(); ++i) {
    const Vec2 in = loop[i] - loop[(i + loop.size() - 1) % loop.size()],
               out = loop[(i + 1) % loop.size()] - loop[i];
    most = std::max(most, std::abs(std::atan2(cross(in, out), in.dot(out))));
  }
  return most * 57.29577951308232;
}

TEST(CornerMove, ARoundedCornerTakesItsRoundingAlongAndStaysSmooth) {
  const Polygon before = rounded_rectangle();
  const std::size_t point = in_upper_right(before);
  const Vec2 by(0.009, 0.006);
  const Polygon after = with_corner_moved(before, point, by);
  ASSERT_EQ(after.size(), before.size());
  for (std::size_t i = 0; i < before.size(); ++i) {
    const Vec2 moved = after[i] - before[i];
    if (before[i].x() > 0.052 - 1e-9 && before[i].y() > 0.032 - 1e-9) {
      EXPECT_LT((moved - by).norm(), 0.003) << "point " << i << " of the rounding stayed behind";
    }
    if (before[i].x() < 0.009 && before[i].y() < 0.009) {
      EXPECT_LT(moved.norm(), 1e-12) << "the corner across moved";
    }
  }
  EXPECT_LT(most_turn_deg(after), 1.6 * most_turn_deg(before)) << "an edge meets its rounding in a kink";
  const Polygon back = with_corner_moved(after, point, -by);
  for (std::size_t i = 0; i < before.size(); ++i) EXPECT_LT((back[i] - before[i]).norm(), 1e-9);
}

TEST(CornerMove, RoundingsShrinkWhereTheEdgeBetweenThemGrowsTooShort) {
  const Polygon before = rounded_rectangle();
  const Polygon after = with_corner_moved(before, in_upper_right(before), {0.0, -0.03});
  for (std::size_t i = 0; i < after.size(); ++i)
    EXPECT_GT((after[(i + 1) % after.size()] - after[i]).norm(), 1e-5);
  EXPECT_LT(most_turn_deg(after), 60.0);
}

TEST(CornerMove, ASharpCornerAndAPointOfACircleGoAlone) {
  const Polygon sharp{{0.0, 0.0}, {0.06, 0.0}, {0.06, 0.01}, {0.0, 0.01}};
  Polygon circle;
  for (int i = 0; i < 40; ++i) circle.emplace_back(0.02 * std::cos(0.157 * i), 0.02 * std::sin(0.157 * i));
  for (const Polygon& before : {sharp, circle}) {
    const Polygon after = with_corner_moved(before, 2, {0.001, 0.002});
    for (std::size_t i = 0; i < before.size(); ++i)
      EXPECT_NEAR((after[i] - before[i]).norm(), i == 2 ? std::hypot(0.001, 0.002) : 0.0, 1e-12);
  }
}

}  // namespace
}  // namespace wrapgauge
