#include "model/casting/silicone_amount.hpp"

#include <cmath>
#include <numbers>

#include "model/casting/closing_range.hpp"
#include "model/geometry/stroke.hpp"
#include "tables.hpp"

namespace wrapgauge {
namespace {

Layout band() {
  Layout layout;
  layout.outline_m = {{0, 0}, {0.25, 0}, {0.25, 0.1}, {0, 0.1}};
  layout.chambers = {{"pad", {{0.05, 0.02}, {0.2, 0.02}, {0.2, 0.08}, {0.05, 0.08}}, {}, {}}};
  layout.inlets = {{"fill", {0.1, 0.05}}};
  layout.skin_sheet = {"00-30", 1.5 * mm};
  layout.outer_sheet = {"00-10", 2.0 * mm};
  return layout;
}

std::vector<SheetAmount> amounts_of(const Layout& layout, const CastingAllowance& allowance) {
  return silicone_amounts(layout, test::grades_of(layout), allowance);
}

// By hand: 25 cm x 10 cm = 250 cm2; x 0.15 cm = 37.5 mL, x 1.15 = 43.125 mL, x 1.07 g/mL = 46.14375 g;
// x 0.2 cm = 50 mL, x 1.15 = 57.5 mL, x 1.04 g/mL = 59.8 g.
TEST(SiliconeAmount, IsTheOutlineTimesTheThicknessWithSpillAndDensity) {
  const auto amounts = amounts_of(band(), {Length(), Length(), 0.15});
  ASSERT_EQ(amounts.size(), 2u);
  EXPECT_NEAR(amounts[0].area / cm2, 250.0, 1e-9);
  EXPECT_NEAR(amounts[0].volume / mL, 37.5, 1e-9);
  EXPECT_NEAR(amounts[0].to_mix / mL, 43.125, 1e-9);
  EXPECT_NEAR(amounts[0].grams_to_mix, 46.14375, 1e-9);
  EXPECT_NEAR(amounts[1].volume / mL, 50.0, 1e-9);
  EXPECT_NEAR(amounts[1].grams_to_mix, 59.8, 1e-9);
  EXPECT_NEAR(grams_of(amounts), 105.94375, 1e-9);
  EXPECT_NE(amounts[0].density_source.find("from memory"), std::string::npos);
}

// The table of the program says 15 %.
TEST(SiliconeAmount, TheSpillOfTheRulesIsAPercentage) {
  EXPECT_NEAR(casting_allowance(test::rules()).spill, 0.15, 1e-12);
}

TEST(SiliconeAmount, APrestretchedSheetIsCastSmaller) {
  Layout layout = band();
  layout.skin_sheet.prestretch = 1.25;
  const auto amounts = amounts_of(layout, {});
  EXPECT_NEAR(amounts[0].area / cm2, 200.0, 1e-9);
  EXPECT_NEAR(amounts[0].volume / mL, 30.0, 1e-9);
}

// By hand: 1 cm round 25 x 10 cm is 27 x 12 cm less four corners of (1 - pi / 4) cm2.
TEST(SiliconeAmount, TheTrimBorderGoesRoundTheOutline) {
  const auto amounts = amounts_of(band(), {10.0 * mm, Length(), 0.0});
  EXPECT_NEAR(amounts[0].area / cm2, 27.0 * 12.0 - 4.0 + std::numbers::pi, 1e-9);
}

// By hand: 250 cm2 less a chamber of 15 x 6 cm, with a spot of 1 cm2 and a strip of 5 mm x 2 cm to the edge.
TEST(SiliconeAmount, TheFusingLayerLiesWhereTheSheetsMeet) {
  Layout layout = band();
  layout.chambers[0].inset_spots = {{{0.12, 0.05}, Length(1e-2 / std::sqrt(std::numbers::pi))}};
  layout.channels = {{"tube", {{0.19, 0.05}, {0.22, 0.05}}, 5.0 * mm}};
  layout.inlets[0].point_m = {0.219, 0.05};
  const auto amounts = amounts_of(layout, {Length(), 0.5 * mm, 0.0});
  ASSERT_EQ(amounts.size(), 3u);
  EXPECT_EQ(amounts[2].material, "00-10");
  EXPECT_NEAR(amounts[2].area / cm2, 250.0 - 90.0 + 1.0 - 1.0, 1e-6);
  EXPECT_NEAR(amounts[2].grams_to_mix, 160.0 * 0.05 * 1.04, 1e-6);
}

TEST(SiliconeAmount, IsToldWithTheDigitsItDeserves) {
  EXPECT_EQ(about_amount(46.14), "45");
  EXPECT_EQ(about_amount(8.4), "8");
  EXPECT_EQ(about_amount(112.6), "115");
  EXPECT_EQ(about_amount(344.0), "340");
  EXPECT_EQ(about_amount(1260.0), "1250");
}

// Closing lengths from the chamber's end at 200 mm to the strap's end at 290 mm, stretched by 5 %.
TEST(ClosingRange, RunsFromTheLastChamberToTheEndOfTheStrap) {
  Layout layout = band();
  EXPECT_FALSE(closing_range(layout, test::rules()));
  layout.closure = Closure{0.0, std::nullopt, 0.05};
  layout.straps = {
      {"strap", {{0.25, 0.02}, {0.29, 0.02}, {0.29, 0.08}, {0.25, 0.08}}, 20.0 * N_per_mm, 1.0 * mm}};
  const auto range = closing_range(layout, test::rules());
  ASSERT_TRUE(range);
  EXPECT_NEAR(range->smallest_girth() / mm, 210.0, 1e-9);
  EXPECT_NEAR(range->largest_girth() / mm, 304.5, 1e-9);
  EXPECT_NEAR(range->largest_held_girth() / mm, 275.0 * 1.05, 1e-9);
  layout.closure = Closure{0.01, Length(0.24), std::nullopt};
  EXPECT_NEAR(closing_range(layout, test::rules()).value().smallest_girth() / mm, 190.0, 1e-9);
}

TEST(ClosingRange, HoldsAtTheMiddleHeightOfATaperedLayout) {
  Layout layout = band();
  layout.closure = Closure{0.0, std::nullopt, 0.0, 0.2};
  layout.outline_m = {
      {0.01, 0}, {0.24, 0}, {0.26, 0.1}, {-0.01, 0.1}};  // the second side slants like the line
  const auto range = closing_range(layout, test::rules());
  ASSERT_TRUE(range);
  // The side from (240, 0) to (260, 100) mm moves by 0.2 a mm, the line by 0.1: farthest at the top, 255.
  EXPECT_NEAR(range->largest_girth() / mm, 255.0, 1e-9);
}

TEST(ClosingRange, TooLittleOverlapIsFoundAtItsThreshold) {
  Layout layout = band();
  layout.closure = Closure{0.0, std::nullopt, 0.05};
  EXPECT_FALSE(check_overlap(layout, 0.2349 * metre, test::rules()));
  const auto finding = check_overlap(layout, 0.2351 * metre, test::rules());
  ASSERT_TRUE(finding);
  EXPECT_NEAR(finding->value, 14.9, 1e-9);
  EXPECT_NE(english(finding->sentence).find("closed at 235.1 mm, 14.9 mm of the layout is left"),
            std::string::npos)
      << english(finding->sentence);
}

// A sheet whose left edge is half a circle, so that nothing but its tip lies on the first line.
TEST(ClosingLine, ThatRunsOffTheSheetIsFound) {
  Layout layout = band();
  Polygon outline{{0.25, 0}, {0.25, 0.1}};
  for (int k = 0; k <= 32; ++k) {
    const double angle = std::numbers::pi * (0.5 + k / 32.0);
    outline.push_back(Vec2(0.05 + 0.05 * std::cos(angle), 0.05 + 0.05 * std::sin(angle)));
  }
  layout.outline_m = outline;
  const auto found = [&](double from_x_m) {
    layout.closure = Closure{from_x_m, std::nullopt, 0.0};
    int count = 0;
    for (const CastingFinding& finding : test::findings_of(layout))
      if (finding.rule == CastingRule::kClosingLine) {
        ++count;
        EXPECT_NE(english(finding.sentence).find("the first closing line through ("), std::string::npos);
      }
    return count;
  };
  EXPECT_EQ(found(0.0), 1);
  // Chord of half the height: 50 - sqrt(50^2 - 25^2) mm from the tip, less 0.1 mm.
  EXPECT_EQ(found(0.0065), 1);
  EXPECT_EQ(found(0.0068), 0);
  EXPECT_NEAR(share_on_sheet(layout, Length(), WhichLine::kFirst),
              2.0 * std::sqrt(0.05 * 0.05 - 0.0431 * 0.0431) / 0.1, 0.005);
}

TEST(ClosingLine, TheSecondMayLieOnANarrowStrapButNotBesideIt) {
  Layout layout = band();
  layout.closure = Closure{0.0, std::nullopt, 0.0};
  layout.straps = {
      {"strap", {{0.25, 0.04}, {0.29, 0.04}, {0.29, 0.06}, {0.25, 0.06}}, 20.0 * N_per_mm, 1.0 * mm}};
  EXPECT_FALSE(check_second_line(layout, 0.26 * metre, test::rules()));
  layout.outline_m = {{0, 0},       {0.25, 0},    {0.25, 0.04}, {0.29, 0.04},
                      {0.29, 0.06}, {0.25, 0.06}, {0.25, 0.1},  {0, 0.1}};
  layout.straps.clear();
  const auto finding = check_second_line(layout, 0.26 * metre, test::rules());
  ASSERT_TRUE(finding);
  EXPECT_NEAR(finding->value, 20.0, 0.3);
  EXPECT_NE(english(finding->sentence).find("the second closing line through (260.0, 50.0) mm"),
            std::string::npos)
      << english(finding->sentence);
  EXPECT_FALSE(check_second_line(layout, 0.25 * metre, test::rules()));
}

}  // namespace
}  // namespace wrapgauge
