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

// By hand: 25 cm x 10 cm = 250 cm2; x 0.15 cm = 37.5 mL, x 1.15 = 43.125 mL, x 1.07 g/mL = 46.14375 g;
// x 0.2 cm = 50 mL, x 1.15 = 57.5 mL, x 1.04 g/mL = 59.8 g.
TEST(SiliconeAmount, IsTheOutlineTimesTheThicknessWithSpillAndDensity) {
  const Layout layout = band();
  const auto amounts = silicone_amounts(layout, test::grades_of(layout), test::rules());
  ASSERT_EQ(amounts.size(), 2u);
  EXPECT_NEAR(amounts[0].area / cm2, 250.0, 1e-9);
  EXPECT_NEAR(amounts[0].volume / mL, 37.5, 1e-9);
  EXPECT_NEAR(amounts[0].to_mix / mL, 43.125, 1e-9);
  EXPECT_NEAR(amounts[0].grams_to_mix, 46.14375, 1e-9);
  EXPECT_NEAR(amounts[1].volume / mL, 50.0, 1e-9);
  EXPECT_NEAR(amounts[1].grams_to_mix, 59.8, 1e-9);
  EXPECT_NE(amounts[0].density_source.find("from memory"), std::string::npos);
}

TEST(SiliconeAmount, APrestretchedSheetIsCastSmaller) {
  Layout layout = band();
  layout.skin_sheet.prestretch = 1.25;
  const auto amounts = silicone_amounts(layout, test::grades_of(layout), test::rules());
  EXPECT_NEAR(amounts[0].area / cm2, 200.0, 1e-9);
  EXPECT_NEAR(amounts[0].volume / mL, 30.0, 1e-9);
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
  EXPECT_NE(finding->sentence.find("closed at 235.1 mm, 14.9 mm of the layout is left"), std::string::npos)
      << finding->sentence;
}

}  // namespace
}  // namespace wrapgauge
