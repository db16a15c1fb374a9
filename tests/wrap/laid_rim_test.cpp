#include "model/wrap/laid_rim.hpp"

#include <gtest/gtest.h>

#include <numbers>

#include "bodyforms/form.hpp"
#include "model/wrap/body_surface.hpp"

namespace wrapgauge {
namespace {

Layout band(double width_m, double height_m, std::optional<double> stretch) {
  Layout layout;
  layout.outline_m = {{0, 0}, {width_m, 0}, {width_m, height_m}, {0, height_m}};
  if (stretch) layout.closure = Closure{0.0, std::nullopt, *stretch};
  return layout;
}

// A round limb of 300 mm girth.
struct OnALimb : testing::Test {
  Body limb = make_form("cylinder", {{"girth", 300.0}, {"length", 240.0}}).value();
  BodySurface surface{limb};
  Placement at(double station_mm) const {
    Placement placement;
    placement.anchor = AnchorAtStation{station_mm * mm, 90.0};
    return placement;
  }
  double farthest_off_skin_m(const LaidRim& rim) const {
    double farthest = 0.0;
    for (Eigen::Index k = 0; k < rim.ends_m.rows(); ++k) {
      const Vec3 p = rim.ends_m.row(k);
      farthest = std::max(farthest, (surface.project(p) - p).norm());
    }
    return farthest;
  }
};
double length_m(const Points3& along) {
  double sum = 0.0;
  for (Eigen::Index k = 0; k + 1 < along.rows(); ++k) sum += (along.row(k + 1) - along.row(k)).norm();
  return sum;
}

TEST_F(OnALimb, EndsThatDoNotMeetAreNamedWithWhatIsMissing) {
  const auto rim = laid_rim(surface, band(0.27, 0.06, 0.0), at(120.0));
  ASSERT_TRUE(rim) << rim.problem().message;
  ASSERT_TRUE(rim->gap);
  EXPECT_NEAR(rim->gap->missing / mm, 30.0, 0.5);
  EXPECT_NEAR(1e3 * length_m(rim->gap->along_m), 30.0, 0.5);
  EXPECT_GT(rim->ends_m.rows(), 100);
  EXPECT_LT(farthest_off_skin_m(*rim), 1e-6);
  EXPECT_FALSE(rim->cut);
}

// Stretched by a tenth it needs a tenth less.
TEST_F(OnALimb, StretchMakesTheGapNarrower) {
  const auto rim = laid_rim(surface, band(0.27, 0.06, 0.1), at(120.0));
  ASSERT_TRUE(rim.ok() && rim->gap);
  EXPECT_NEAR(rim->gap->missing / mm, 300.0 / 1.1 - 270.0, 0.5);
}

TEST_F(OnALimb, EndsThatMeetHaveNoGapNorHasAPadThatDoesNotGoRound) {
  for (const auto& layout : {band(0.32, 0.06, 0.0), band(0.12, 0.06, {})}) {
    const auto rim = laid_rim(surface, layout, at(120.0));
    ASSERT_TRUE(rim);
    EXPECT_FALSE(rim->gap);
    EXPECT_GT(rim->ends_m.rows(), 20);
    EXPECT_LT(farthest_off_skin_m(*rim), 1e-6);
  }
}

TEST_F(OnALimb, WhatRunsOffIsLeftOutAndTheRestIsThere) {
  for (const auto& layout : {band(0.32, 0.06, 0.0), band(0.12, 0.06, {})}) {
    const auto whole = laid_rim(surface, layout, at(120.0)), off = laid_rim(surface, layout, at(225.0));
    ASSERT_TRUE(whole.ok() && off.ok());
    EXPECT_TRUE(off->cut);
    EXPECT_GT(off->ends_m.rows(), whole->ends_m.rows() / 4);
    EXPECT_LT(off->ends_m.rows(), whole->ends_m.rows());
  }
}

}  // namespace
}  // namespace wrapgauge
