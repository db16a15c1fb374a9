#include "model/wrap/fit_of.hpp"

#include <gtest/gtest.h>

#include <numbers>

#include "flat_rectangle.hpp"
#include "model/wrap/fit_words.hpp"
#include "tests/geometry/shapes.hpp"

namespace wrapgauge {
namespace {

constexpr double kGirth = 2.0 * std::numbers::pi * 0.04;  // of the limb below

Wrap wrapped_round(double width_m, double height_m, bool closes, double turn_deg = 0.0) {
  static const Body limb = [] {
    Body body;
    body.surface = shapes::tube(0.04, 0.04, 0.6, 360, 60);
    return body;
  }();
  const auto flat = flat::rectangle(width_m, height_m, 0.005, closes);
  Placement placement;
  placement.anchor = AnchorAtStation{300.0 * mm, 40.0};
  placement.turn_deg = turn_deg;
  const auto wrap = wrap_layout(limb, flat.layout, flat.mesh, placement);
  EXPECT_TRUE(wrap.ok()) << (wrap ? "" : wrap.problem().message);
  return wrap ? *wrap : Wrap{};
}

// Both parts that lie on each other count, each as wide as what the layout is longer than the girth.
TEST(FitOf, WhatIsLongerThanTheGirthLapsItselfByTwiceThatArea) {
  const Fit fit = wrapped_round(0.30, 0.06, false).fit;
  ASSERT_TRUE(fit.lap);
  EXPECT_EQ(fit.lap->layers, 2);
  EXPECT_NEAR(fit.lap->area / cm2, 2.0 * 1e4 * (0.30 - kGirth) * 0.06, 6.0);  // by whole vertices
  EXPECT_NEAR(fit.lap->girth / mm, 1e3 * kGirth, 0.1);
  EXPECT_NEAR(fit.lap->station / mm, 300.0, 1e-6);
  EXPECT_EQ(wrapped_round(0.55, 0.06, false).fit.lap->layers, 3);
  EXPECT_TRUE(laps_itself(fit));
}

TEST(FitOf, EdgesThatMeetOrAStripThatWindsPastItselfDoNotLap) {
  const Fit meets = wrapped_round(kGirth, 0.06, false).fit;
  EXPECT_FALSE(meets.lap);
  const Fit winds = wrapped_round(0.40, 0.03, false, 30.0).fit;
  EXPECT_FALSE(winds.lap);
  EXPECT_FALSE(winds.slit);
  EXPECT_FALSE(laps_itself(winds));
}

TEST(FitOf, ASlitIsWhatIsMissingOfTheWayRoundAndAPadHasNone) {
  const Fit fit = wrapped_round(0.22, 0.06, false).fit;
  ASSERT_TRUE(fit.slit);
  EXPECT_NEAR(fit.slit->width / mm, 1e3 * (kGirth - 0.22), 0.1);
  EXPECT_NEAR(fit.slit->station / mm, 300.0, 1e-6);
  EXPECT_FALSE(wrapped_round(0.12, 0.06, false).fit.slit);
  EXPECT_FALSE(wrapped_round(0.22, 0.06, true).fit.slit) << "fastened over its whole height";
}

TEST(FitOf, SectionsOfAClosedLayoutRunFromDistalWithTheirStretch) {
  for (const double turn_deg : {0.0, 180.0}) {
    const Fit fit = wrapped_round(0.24, 0.06, true, turn_deg).fit;
    ASSERT_GT(fit.sections.size(), 2U);
    EXPECT_NEAR(fit.sections.front().station / mm, 270.0, 1e-3);
    EXPECT_NEAR(fit.sections.back().station / mm, 330.0, 1e-3);
    for (const GirthSection& section : fit.sections)
      EXPECT_NEAR(section.stretch(), kGirth / 0.24 - 1.0, 1e-4);
    EXPECT_FALSE(laps_itself(fit));
  }
}

TEST(FitOf, AClosingLengthOfOneAndAHalfGirthsIsWoundRound) {
  EXPECT_FALSE(laps_itself(wrapped_round(1.45 * kGirth, 0.04, true).fit));
  const auto problem = laps_itself(wrapped_round(1.55 * kGirth, 0.04, true).fit);
  ASSERT_TRUE(problem);
  EXPECT_NE(problem->message.find("1.6 times the girth of 251.3 mm"), std::string::npos) << problem->message;
}

}  // namespace
}  // namespace wrapgauge
