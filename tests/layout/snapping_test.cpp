#include "model/layout/snapping.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

TEST(Snapping, APartRestsInLineWithAnotherEdgeThatIsNearAndElseOnTheGrid) {
  const Bounds2 moved{{0.0, 0.0}, {0.010, 0.010}}, other{{0.030, 0.0205}, {0.050, 0.040}};
  const Snapped near = snapped_move(moved, {other}, {0.0193, 0.0032}, 1e-3, 0.5e-3);
  EXPECT_NEAR(near.by_m.x(), 0.020, 1e-12);  // its right edge meets the other's left one
  ASSERT_TRUE(near.line_x_m);
  EXPECT_NEAR(*near.line_x_m, 0.030, 1e-12);
  EXPECT_NEAR(near.by_m.y(), 0.003, 1e-12);  // nothing near upwards: the grid
  EXPECT_FALSE(near.line_y_m);
}

}  // namespace
}  // namespace wrapgauge
