#include "model/wrap/wrap_quality.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "flat_rectangle.hpp"

namespace wrapgauge {
namespace {

// The flat layout under one linear map everywhere, into the plane z = 0.
std::vector<WrapQuality> quality_under(double xx, double xy, double yx, double yy) {
  const flat::Rectangle made = flat::rectangle(0.1, 0.06, 0.01, false);
  Points3 laid(made.mesh.vertices_m.rows(), 3);
  for (Eigen::Index v = 0; v < laid.rows(); ++v) {
    const double x = made.mesh.vertices_m(v, 0), y = made.mesh.vertices_m(v, 1);
    laid.row(v) << xx * x + xy * y, yx * x + yy * y, 0.0;
  }
  return wrap_quality(made.layout, made.mesh, laid);
}

// Simple shear by tan 10 degrees leans the y lines by 10 degrees.
TEST(WrapQuality, ShearIsTheAngleInDegreesByWhichARightAngleIsLost) {
  const auto quality = quality_under(1.0, std::tan(10.0 * std::numbers::pi / 180.0), 0.0, 1.0);
  ASSERT_EQ(quality.size(), 3U);
  for (const WrapQuality& part : quality) EXPECT_NEAR(part.shear_max_deg, 10.0, 1e-9) << part.part;
  EXPECT_EQ(quality.back().part, "whole layout");
}

TEST(WrapQuality, StretchAlongTheSidesIsNoShear) {
  const auto quality = quality_under(1.05, 0.0, 0.0, 0.97);
  EXPECT_NEAR(quality.back().stretch_min, 0.97, 1e-12);
  EXPECT_NEAR(quality.back().stretch_max, 1.05, 1e-12);
  EXPECT_NEAR(quality.back().shear_max_deg, 0.0, 1e-6);
}

// Turning is no distortion.
TEST(WrapQuality, ATurnedLayoutIsNeitherStretchedNorSheared) {
  const double c = std::cos(0.7), s = std::sin(0.7);
  const auto quality = quality_under(c, -s, s, c);
  EXPECT_NEAR(quality.back().stretch_min, 1.0, 1e-7);
  EXPECT_NEAR(quality.back().stretch_max, 1.0, 1e-7);
  EXPECT_NEAR(quality.back().shear_max_deg, 0.0, 1e-6);
}

}  // namespace
}  // namespace wrapgauge
