#include "model/geometry/plane_section.hpp"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "shapes.hpp"

namespace wrapgauge {
namespace {

TEST(PlaneSection, OfAConeIsAClosedCircleRightHandedAboutTheNormal) {
  const TriangleMesh mesh = shapes::tube(0.03, 0.05, 0.2, 360, 31);
  for (double height : {0.013, 0.1, 0.17}) {
    const auto lines = plane_section(mesh, Vec3(0, 0, height), Vec3::UnitZ());
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_TRUE(lines[0].closed);
    EXPECT_NEAR(lines[0].length().si(), 2 * std::numbers::pi * (0.03 + 0.1 * height), 1e-5);
    Vec3 area = Vec3::Zero();
    for (std::size_t i = 0; i < lines[0].points_m.size(); ++i)
      area += lines[0].points_m[i].cross(lines[0].points_m[(i + 1) % lines[0].points_m.size()]);
    EXPECT_GT(area.z(), 0.0);
  }
}

TEST(PlaneSection, ThroughARingOfVerticesIsThatRing) {
  const TriangleMesh mesh = shapes::tube(0.04, 0.04, 0.2, 24, 10);
  const double height = mesh.vertices_m(24 * 5, 2);
  const auto lines = plane_section(mesh, Vec3(0, 0, height), Vec3::UnitZ());
  ASSERT_EQ(lines.size(), 1u);
  EXPECT_TRUE(lines[0].closed);
  EXPECT_EQ(lines[0].points_m.size(), 24u);
  EXPECT_NEAR(lines[0].length().si(), 48 * 0.04 * std::sin(std::numbers::pi / 24), 1e-14);
}

TEST(PlaneSection, AlongATubeIsTwoOpenLines) {
  const TriangleMesh mesh = shapes::tube(0.04, 0.04, 0.2, 24, 10);
  const auto lines = plane_section(mesh, Vec3(0.001, 0, 0), Vec3::UnitX());
  ASSERT_EQ(lines.size(), 2u);
  for (const auto& line : lines) {
    EXPECT_FALSE(line.closed);
    EXPECT_NEAR(line.length().si(), 0.2, 1e-12);
  }
}

TEST(PlaneSection, OfASphereIsTheCircleAtThatHeight) {
  const TriangleMesh mesh = shapes::sphere(0.05, 200, 400);
  const Vec3 normal = Vec3(1, 2, 2).normalized();
  const auto lines = plane_section(mesh, 0.03 * normal, normal);
  ASSERT_EQ(lines.size(), 1u);
  EXPECT_NEAR(lines[0].length().si(), 2 * std::numbers::pi * 0.04, 3e-5);
}

TEST(PlaneSection, IsEmptyWhereThePlaneMisses) {
  const TriangleMesh mesh = shapes::tube(0.04, 0.04, 0.2, 24, 10);
  EXPECT_TRUE(plane_section(mesh, Vec3(0, 0, 0.3), Vec3::UnitZ()).empty());
  EXPECT_TRUE(plane_section(mesh, Vec3(0, 0, -0.1), Vec3::UnitZ()).empty());
}

}  // namespace
}  // namespace wrapgauge
