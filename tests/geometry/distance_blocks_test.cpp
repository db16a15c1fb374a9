#include "model/geometry/distance_blocks.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/geometry/shapes.hpp"

namespace wrapgauge {
namespace {

using shapes::sphere;
using Distance = std::shared_ptr<const SignedDistance>;

Vec3 probe(int i) {
  return 0.03 * Vec3(std::sin(1.3 * i), std::cos(0.7 * i), std::sin(2.1 * i + 1.0));
}

void expect_same_bits(const Distance& one, const Distance& two) {
  for (int i = 0; i < 200; ++i) {
    const DistanceSample a = one->at(probe(i)), b = two->at(probe(i));
    ASSERT_EQ(a.distance_m, b.distance_m);
    ASSERT_EQ(a.gradient, b.gradient);
    ASSERT_EQ(a.hessian_per_m, b.hessian_per_m);
  }
}

const Vec3 kLow(-0.041, -0.042, -0.043), kHigh(0.044, 0.045, 0.046);

TEST(DistanceBlocks, MeasureWhatAGridOverTheSameBoxDoes) {
  const TriangleMesh ball = sphere(0.03, 24, 48);
  DistanceBlocks blocks;
  const Vec3 low = Vec3::Constant(-0.045), high = Vec3::Constant(0.05);  // whole cells of 2.5 mm
  const auto kept = blocks.over(ball, low, high), made = make_grid_distance(ball, low, high);
  ASSERT_TRUE(kept.ok() && made.ok());
  for (int i = 0; i < 200; ++i)
    EXPECT_NEAR((*kept)->at(probe(i)).distance_m, (*made)->at(probe(i)).distance_m, 1e-4) << i;
}

TEST(DistanceBlocks, AreTheSameBitsWhateverWasAskedBefore) {
  const TriangleMesh ball = sphere(0.03, 24, 48);
  DistanceBlocks fresh, used;
  ASSERT_TRUE(used.over(ball, Vec3::Constant(-0.02), Vec3(0.08, 0.02, 0.03)).ok());
  ASSERT_TRUE(used.over(ball, Vec3(-0.09, -0.01, -0.03), Vec3::Constant(0.02)).ok());
  const auto one = fresh.over(ball, kLow, kHigh), two = used.over(ball, kLow, kHigh);
  ASSERT_TRUE(one.ok() && two.ok());
  expect_same_bits(*one, *two);
}

TEST(DistanceBlocks, MeasureNothingTwice) {
  const TriangleMesh ball = sphere(0.03, 24, 48);
  DistanceBlocks blocks;
  ASSERT_TRUE(blocks.over(ball, kLow, kHigh).ok());
  const std::size_t before = blocks.measured();
  ASSERT_TRUE(blocks.over(ball, kLow + Vec3::Constant(0.001), kHigh - Vec3::Constant(0.001)).ok());
  EXPECT_EQ(blocks.measured(), before);
}

TEST(DistanceBlocks, OfAnotherSurfaceOfAsManyVerticesStartAfresh) {
  const TriangleMesh ball = sphere(0.03, 24, 48), larger = sphere(0.031, 24, 48);
  DistanceBlocks fresh, used;
  ASSERT_TRUE(used.over(ball, kLow, kHigh).ok());
  const auto one = fresh.over(larger, kLow, kHigh), two = used.over(larger, kLow, kHigh);
  ASSERT_TRUE(one.ok() && two.ok());
  expect_same_bits(*one, *two);
}

TEST(DistanceBlocks, RefuseWhatAGridRefuses) {
  DistanceBlocks blocks;
  EXPECT_FALSE(blocks.over(TriangleMesh{}, kLow, kHigh).ok());
  EXPECT_FALSE(blocks.over(sphere(0.03, 6, 12), kHigh, kLow).ok());
  EXPECT_FALSE(blocks.over(sphere(0.03, 6, 12), kLow, Vec3::Constant(std::nan(""))).ok());
}

}  // namespace
}  // namespace wrapgauge
