#include "model/body/tissue_depths.hpp"

#include <gtest/gtest.h>

#include "tests/geometry/shapes.hpp"

namespace wrapgauge {
namespace {

TEST(TissueDepths, OneDepthIsThatOfAllPoints) {
  EXPECT_FALSE(one_depth_mm({}));
  EXPECT_EQ(one_depth_mm({7.0}), 7.0);
  EXPECT_EQ(one_depth_mm({7.0, 7.0, 7.0}), 7.0);
  EXPECT_FALSE(one_depth_mm({7.0, 7.0, 7.5}));
}

// Depths that grow evenly along a tube of 40 mm radius, put on one of 43 mm with other points.
TEST(TissueDepths, EachPointTakesThatOfTheNearestPlaceAndTheDistanceIsSaid) {
  const TriangleMesh before = shapes::tube(0.040, 0.040, 0.2, 90, 20);
  const TriangleMesh after = shapes::tube(0.043, 0.043, 0.2, 64, 33);
  std::vector<double> depth_mm;
  for (Eigen::Index v = 0; v < before.vertices_m.rows(); ++v)
    depth_mm.push_back(10.0 + 50.0 * before.vertices_m(v, 2));
  const BroughtDepths brought = depths_at_nearest(depth_mm, before, after.vertices_m);
  ASSERT_EQ(brought.depth_mm.size(), static_cast<std::size_t>(after.vertices_m.rows()));
  for (Eigen::Index v = 0; v < after.vertices_m.rows(); ++v)
    EXPECT_NEAR(brought.depth_mm[static_cast<std::size_t>(v)], 10.0 + 50.0 * after.vertices_m(v, 2), 0.0051);
  EXPECT_NEAR(brought.farthest / mm, 3.0, 0.03);
}

}  // namespace
}  // namespace wrapgauge
