#include "app/picture/skin_surface.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace wrapgauge {
namespace {

// A tube of 40 mm radius and 0.2 m length round z, without ends.
TriangleMesh tube() {
  constexpr int kRound = 64;
  TriangleMesh mesh;
  mesh.vertices_m.resize(2 * kRound, 3);
  mesh.faces.resize(2 * kRound, 3);
  for (int k = 0; k < kRound; ++k) {
    const double angle = 2.0 * std::numbers::pi * k / kRound;
    const int next = (k + 1) % kRound;
    mesh.vertices_m.row(2 * k) << 0.04 * std::cos(angle), 0.04 * std::sin(angle), 0.0;
    mesh.vertices_m.row(2 * k + 1) << 0.04 * std::cos(angle), 0.04 * std::sin(angle), 0.2;
    mesh.faces.row(2 * k) << 2 * k, 2 * next, 2 * k + 1;
    mesh.faces.row(2 * k + 1) << 2 * next, 2 * next + 1, 2 * k + 1;
  }
  return mesh;
}

TEST(SkinSurface, ALineOfSightMeetsTheNearSideWhereItCrossesIt) {
  const SkinSurface skin(tube());
  for (const double aside : {-0.038, -0.02, 0.0, 0.011, 0.0399}) {
    const auto met = skin.first_met({4.0, aside, 0.1}, -Vec3::UnitX(), 8.0);
    ASSERT_TRUE(met) << aside;
    EXPECT_NEAR(met->y(), aside, 1e-6);
    EXPECT_NEAR(met->z(), 0.1, 1e-6);
    EXPECT_NEAR(std::hypot(met->x(), met->y()), 0.04, 6e-5);  // 64 flat sides
    EXPECT_GT(met->x(), -1e-6);
  }
}

TEST(SkinSurface, ALineOfSightBesideTheBodyMeetsNothing) {
  const SkinSurface skin(tube());
  EXPECT_FALSE(skin.first_met({4.0, 0.0401, 0.1}, -Vec3::UnitX(), 8.0));
  EXPECT_FALSE(skin.first_met({4.0, 0.0, 0.21}, -Vec3::UnitX(), 8.0));
  EXPECT_FALSE(skin.first_met({4.0, 0.0, 0.1}, -Vec3::UnitX(), 3.9));
}

TEST(SkinSurface, ThroughTheOpenEndTheFarSideIsMetFromWithin) {
  const SkinSurface skin(tube());
  const Vec3 slanting = Vec3(-0.04, 0.0, -0.1).normalized();
  const auto met = skin.first_met(Vec3(0.0, 0.0, 0.2) - 0.3 * slanting, slanting, 8.0);
  ASSERT_TRUE(met);
  EXPECT_NEAR(met->z(), 0.1, 2e-4);
}

TEST(SkinSurface, ThePointNearestToOneOffTheSkinLiesUnderItWithTheOutwardNormal) {
  const SkinSurface skin(tube());
  const SkinPoint at = skin.at({0.05, 0.0, 0.07});
  EXPECT_NEAR((at.point_m - Vec3(0.04, 0.0, 0.07)).norm(), 0.0, 1e-9);
  EXPECT_NEAR((at.normal - Vec3::UnitX()).norm(), 0.0, 1e-6);
  const Points3 several{{0.05, 0.0, 0.07}, {0.0, 0.05, 0.2}};
  EXPECT_NEAR((skin.nearest(several).points_m.row(1).transpose() - Vec3(0.0, 0.04, 0.2)).norm(), 0.0, 1e-9);
}

}  // namespace
}  // namespace wrapgauge
