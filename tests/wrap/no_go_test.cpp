#include "model/wrap/no_go.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

// Two triangles, 10 mm square, 40 mm off the axis.
FlatMesh two_triangles() {
  FlatMesh flat;
  flat.triangles.resize(2, 3);
  flat.triangles << 0, 1, 2, 0, 2, 3;
  return flat;
}
Points3 worn_square() {
  Points3 worn(4, 3);
  worn << 0.04, 0.0, 0.10, 0.04, 0.01, 0.10, 0.04, 0.01, 0.11, 0.04, 0.0, 0.11;
  return worn;
}

TEST(NoGo, ALayoutOnItIsRefusedByName) {
  const auto problem_at = [](const Vec3& point, double radius_mm, bool no_go) {
    const SkinRegion region{"wound", NearPoint{"", point, radius_mm * mm}, no_go, 30.0 * mm, {}, Length()};
    return covered_no_go({region}, {}, two_triangles(), worn_square());
  };
  const auto found = problem_at({0.04, 0.02, 0.105}, 11.0, true);
  ASSERT_TRUE(found);
  EXPECT_NE(found->message.find("The layout lies on 'wound', where nothing may lie"), std::string::npos);
  EXPECT_FALSE(problem_at({0.04, 0.02, 0.105}, 9.0, true));
  EXPECT_FALSE(problem_at({0.04, 0.02, 0.105}, 11.0, false));
  EXPECT_TRUE(problem_at({0.04, 0.007, 0.104}, 1.0, true));  // between the corners
  EXPECT_TRUE(problem_at({0.04, 0.008, 0.104}, 0.3, true));  // between all places that are looked at
}

TEST(NoGo, AZoneThatRunsBetweenTheCornersIsFoundToo) {
  const SkinRegion band{"scar", BetweenStations{104.0 * mm, 106.0 * mm}, true, {}, {}, Length()};
  EXPECT_TRUE(covered_no_go({band}, {}, two_triangles(), worn_square()));
  const SkinRegion beside{"scar", BetweenStations{111.0 * mm, 113.0 * mm}, true, {}, {}, Length()};
  EXPECT_FALSE(covered_no_go({beside}, {}, two_triangles(), worn_square()));
}

}  // namespace
}  // namespace wrapgauge
