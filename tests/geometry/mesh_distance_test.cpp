#include "model/geometry/mesh_distance.hpp"

#include <gtest/gtest.h>

#include "shapes.hpp"

namespace wrapgauge {
namespace {

// A wedge with a thin, sharp edge: from some outside points the nearest place is a corner whose face normals
// disagree about the side, which only the angle-weighted normal settles.
TEST(MeshDistance, SignIsRightNearASharpCorner) {
  TriangleMesh tetrahedron;
  tetrahedron.vertices_m.resize(4, 3);
  tetrahedron.vertices_m << 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 0.1;
  tetrahedron.faces.resize(4, 3);
  tetrahedron.faces << 0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3;
  const auto distance = make_mesh_distance(tetrahedron);
  ASSERT_TRUE(distance.ok());
  int inside = 0;
  for (double x = -0.485; x < 1.5; x += 0.07) {
    for (double y = -0.485; y < 1.5; y += 0.07) {
      for (double z = -0.2; z < 0.3; z += 0.021) {
        const bool in = x > 0 && y > 0 && z > 0 && x + y + 10 * z < 1;
        inside += in;
        EXPECT_EQ(distance->at(Vec3(x, y, z)).distance_m < 0, in) << x << " " << y << " " << z;
      }
    }
  }
  EXPECT_GT(inside, 100);
}

TEST(MeshDistance, BeyondAnOpenEndContinuesTheTube) {
  const auto distance = make_mesh_distance(shapes::tube(0.04, 0.04, 0.1, 360, 10));
  ASSERT_TRUE(distance.ok());
  for (double offset : {-0.01, 0.003, 0.02}) {
    EXPECT_NEAR(distance->at(Vec3(0.04 + offset, 0, 0.13)).distance_m, offset, 1e-5);
    EXPECT_NEAR(distance->at(Vec3(0, -0.04 - offset, -0.05)).distance_m, offset, 1e-5);
  }
}

}  // namespace
}  // namespace wrapgauge
