#include "app/desk/views/turntable.hpp"

#include <gtest/gtest.h>

#include <Eigen/LU>

namespace wrapgauge {
namespace {

Turntable of_a_limb() {
  Turntable table;
  table.set_size(800, 600);
  table.set_body({Vec3::Zero(), Vec3::UnitZ()}, Vec3(1.0, 0.0, 0.3));
  Points3 ends{{0.04, 0.0, 0.0}, {-0.04, 0.0, 0.3}, {0.0, 0.04, 0.1}};
  table.fit(ends);
  return table;
}

TEST(Turntable, ProximalIsUpHoweverItIsTurned) {
  Turntable table = of_a_limb();
  for (int k = 0; k < 20; ++k) {
    table.turn(37.0, k % 2 == 0 ? 11.0 : -7.0);
    const Mat3 rows = table.view().rows;
    EXPECT_NEAR((rows * rows.transpose() - Mat3::Identity()).norm(), 0.0, 1e-12);
    EXPECT_NEAR(rows.determinant(), 1.0, 1e-12);
    EXPECT_NEAR(rows.row(0).dot(Vec3::UnitZ()), 0.0, 1e-12);  // the axis never leans
    EXPECT_GE(rows.row(1).dot(Vec3::UnitZ()), -1e-12);
  }
}

TEST(Turntable, TheFourSidesLookAlongTheirDirections) {
  Turntable table = of_a_limb();
  table.look_from(ViewSide::kFront);
  EXPECT_NEAR((table.towards_eye() - Vec3::UnitX()).norm(), 0.0, 1e-12);
  table.look_from(ViewSide::kBack);
  EXPECT_NEAR((table.towards_eye() + Vec3::UnitX()).norm(), 0.0, 1e-12);
  table.look_from(ViewSide::kProximal);
  EXPECT_NEAR((table.towards_eye() - Vec3::UnitZ()).norm(), 0.0, 1e-12);
  table.look_from(ViewSide::kDistal);
  EXPECT_NEAR((table.towards_eye() + Vec3::UnitZ()).norm(), 0.0, 1e-12);
}

TEST(Turntable, WhatIsFittedLiesInTheViewAndLeftOfWhatIsCovered) {
  Turntable table = of_a_limb();
  table.set_size(500, 300, 160);
  for (const Vec3& point : {Vec3(0.04, 0.0, 0.0), Vec3(-0.04, 0.0, 0.3), Vec3(0.0, 0.04, 0.1)}) {
    const RasterPoint at = table.view().project(point);
    EXPECT_GE(at.x, 0.0);
    EXPECT_LE(at.x, 340.0);
    EXPECT_GE(at.y, 0.0);
    EXPECT_LE(at.y, 300.0);
  }
}

TEST(Turntable, ShiftingMovesWhatIsSeenByAsManyPixels) {
  Turntable table = of_a_limb();
  const Vec3 point(0.0, 0.01, 0.1);
  const RasterPoint before = table.view().project(point);
  table.pan(30.0, -12.0);
  const RasterPoint after = table.view().project(point);
  EXPECT_NEAR(after.x - before.x, 30.0, 1e-9);
  EXPECT_NEAR(after.y - before.y, -12.0, 1e-9);
}

}  // namespace
}  // namespace wrapgauge
