#include "model/casting/casting_check.hpp"

#include <cmath>
#include <numbers>

#include "model/geometry/stroke.hpp"
#include "model/layout/layout_check.hpp"
#include "tables.hpp"

namespace wrapgauge {
namespace {

using test::findings_of;

Polygon rounded(double x, double y, double width, double height, double radius = 0.008) {
  return flattened_rectangle({x, y}, {width, height}, radius, 5e-5);
}

// 200 x 100 mm, sheets of 1.5 and 2 mm, two chambers 12 mm apart with a 5 mm channel; keeps to every rule.
Layout pair_of_chambers() {
  Layout layout;
  layout.name = "pair";
  layout.outline_m = {{0, 0}, {0.2, 0}, {0.2, 0.1}, {0, 0.1}};
  layout.chambers = {{"left", rounded(0.014, 0.014, 0.08, 0.072), {}, {}},
                     {"right", rounded(0.106, 0.014, 0.08, 0.072), {}, {}}};
  layout.channels = {{"bridge", {{0.088, 0.05}, {0.112, 0.05}}, 5.0 * mm}};
  layout.inlets = {{"fill", {0.054, 0.07}}};
  layout.skin_sheet = {"00-30", 1.5 * mm};
  layout.outer_sheet = {"00-30", 2.0 * mm};
  return layout;
}

// The one finding, which must belong to the rule and carry the number and the place in its sentence.
CastingFinding only(const Layout& layout, CastingRule rule) {
  EXPECT_TRUE(check_layout(layout).empty()) << check_layout(layout).front().message;
  const std::vector<CastingFinding> found = findings_of(layout);
  EXPECT_EQ(found.size(), 1u);
  if (found.empty()) return {};
  EXPECT_EQ(static_cast<int>(found.front().rule), static_cast<int>(rule)) << found.front().sentence;
  return found.front();
}

void expect_says(const CastingFinding& finding, const std::string& words) {
  EXPECT_NE(finding.sentence.find(words), std::string::npos) << finding.sentence;
}

void expect_nothing(const Layout& layout) {
  EXPECT_TRUE(check_layout(layout).empty()) << check_layout(layout).front().message;
  for (const CastingFinding& finding : findings_of(layout)) ADD_FAILURE() << finding.sentence;
}

TEST(CastingCheck, FindsNothingInALayoutThatKeepsToTheRules) {
  expect_nothing(pair_of_chambers());
}

TEST(CastingCheck, ASeamIsThinBelowThreeTimesTheThickerSheet) {
  Layout layout = pair_of_chambers();
  layout.chambers[1].boundary_m = rounded(0.1001, 0.014, 0.08, 0.072);  // 6.1 mm from the other
  expect_nothing(layout);
  layout.chambers[1].boundary_m = rounded(0.0999, 0.014, 0.08, 0.072);  // 5.9 mm
  const CastingFinding finding = only(layout, CastingRule::kSeamWidth);
  EXPECT_NEAR(finding.value, 5.9, 1e-9);
  EXPECT_NEAR(finding.threshold, 6.0, 1e-9);
  EXPECT_NEAR(finding.place_m.value().x(), 0.094, 1e-9);
  expect_says(finding, "chamber 'left' and chamber 'right' is 5.9 mm wide at (94.0,");
  expect_says(finding, "3 times the thicker sheet (6.0 mm)");
}

TEST(CastingCheck, TheRimCountsAsASeam) {
  Layout layout = pair_of_chambers();
  layout.chambers[0].boundary_m = rounded(0.0055, 0.014, 0.0885, 0.072);
  const CastingFinding finding = only(layout, CastingRule::kSeamWidth);
  EXPECT_NEAR(finding.value, 5.5, 1e-9);
  expect_says(finding, "chamber 'left' and the outline is 5.5 mm wide");
}

TEST(CastingCheck, AnInsetSpotNeedsTwiceTheThickerSheetToTheWallAndToTheNext) {
  Layout layout = pair_of_chambers();
  // Wall at x = 14 mm; a spot of radius 4 with its middle 8.1 mm inside leaves 4.1 mm.
  layout.chambers[0].inset_spots = {{{0.0221, 0.05}, 4.0 * mm}};
  expect_nothing(layout);
  layout.chambers[0].inset_spots = {{{0.0218, 0.05}, 4.0 * mm}};
  const CastingFinding to_wall = only(layout, CastingRule::kInsetGap);
  EXPECT_NEAR(to_wall.value, 3.8, 0.05);
  expect_says(to_wall, "inset spot 1 of chamber 'left' and the chamber's wall is 3.8 mm");
  layout.chambers[0].inset_spots = {{{0.040, 0.05}, 4.0 * mm}, {{0.0519, 0.05}, 4.0 * mm}};
  const CastingFinding to_next = only(layout, CastingRule::kInsetGap);
  EXPECT_NEAR(to_next.value, 3.9, 0.05);
  expect_says(to_next, "inset spot 1 of chamber 'left' and inset spot 2");
}

TEST(CastingCheck, AChannelFusesShutBelowThreeMillimetresAndBalloonsAboveEightThinnerSheets) {
  Layout layout = pair_of_chambers();
  for (const double width : {3.0, 12.0}) {
    layout.channels[0].width = width * mm;
    expect_nothing(layout);
  }
  layout.channels[0].width = 2.9 * mm;
  const CastingFinding narrow = only(layout, CastingRule::kChannelLeast);
  expect_says(narrow, "channel 'bridge' is 2.9 mm wide at (100.0, 50.0) mm, less than the 3.0 mm");
  layout.channels[0].width = 12.1 * mm;
  const CastingFinding wide = only(layout, CastingRule::kChannelMost);
  expect_says(wide, "12.1 mm wide at (100.0, 50.0) mm, more than the 12.0 mm");
}

TEST(CastingCheck, ThickSheetsNeedAWiderChannel) {
  Layout layout = pair_of_chambers();
  layout.skin_sheet.thickness = layout.outer_sheet.thickness = 2.5 * mm;
  layout.channels[0].width = 3.6 * mm;
  const CastingFinding finding = only(layout, CastingRule::kChannelLeastThick);
  EXPECT_NEAR(finding.threshold, 3.75, 1e-9);
}

TEST(Corners, HaveTheRadiusOfTheArcTheyWereFlattenedFrom) {
  for (const double radius : {1e-3, 3e-3, 8e-3, 40e-3}) {
    double least = 1.0, turned = 0.0;
    for (const Corner& corner : corners(flattened_rectangle({0, 0}, {0.1, 0.1}, radius, 5e-5))) {
      least = std::min(least, corner.radius_m);
      turned += corner.turn_rad;
    }
    EXPECT_NEAR(least, radius, 0.1 * radius);
    EXPECT_NEAR(turned, 2.0 * std::numbers::pi, 1e-9);
  }
  for (const Corner& corner : corners({{0, 0}, {0.1, 0}, {0.1, 0.1}, {0, 0.1}}))
    EXPECT_NEAR(corner.radius_m, 5e-5 / (1.0 - std::sqrt(0.5)), 1e-9);
}

TEST(CastingCheck, ASharpCornerIsToldOnceWithItsRadiusAndTheOneToUse) {
  Layout layout = pair_of_chambers();
  layout.chambers[0].boundary_m = rounded(0.014, 0.014, 0.08, 0.072, 0.0034);  // 3 mm are asked for
  expect_nothing(layout);
  layout.chambers[0].boundary_m = rounded(0.014, 0.014, 0.08, 0.072, 0.002);
  const std::vector<CastingFinding> found = findings_of(layout);
  ASSERT_EQ(found.size(), 4u);  // one a corner
  for (const CastingFinding& finding : found) {
    EXPECT_EQ(static_cast<int>(finding.rule), static_cast<int>(CastingRule::kCornerRadius));
    EXPECT_NEAR(finding.value, 2.0, 0.2);
    expect_says(finding, "corner of 90 degrees");
    expect_says(finding, "round it by 3.0 mm or more");
  }
}

TEST(CastingCheck, ACornerThatJutsIntoTheChamberCountsToo) {
  Layout layout = pair_of_chambers();
  Polygon& wall = layout.chambers[0].boundary_m;
  // A notch in the right wall, its tip at (70, 50) mm.
  const auto right = std::find_if(
      wall.begin(), wall.end(), [](const Vec2& p) { return std::abs(p.x() - 0.094) < 1e-9 && p.y() > 0.05; });
  ASSERT_NE(right, wall.end());
  wall.insert(right, {{0.094, 0.040}, {0.070, 0.050}, {0.094, 0.060}});
  layout.channels.clear();
  layout.inlets.push_back({"other", {0.14, 0.05}});
  bool tip = false;
  for (const CastingFinding& finding : findings_of(layout))
    tip = tip || (finding.place_m.value().x() == 0.070 && finding.rule == CastingRule::kCornerRadius);
  EXPECT_TRUE(tip);
}

TEST(CastingCheck, AnInsetLineNeedsASpotOnEachSquareEnd) {
  Layout layout = pair_of_chambers();
  layout.chambers[0].inset_lines = {{{{0.03, 0.05}, {0.075, 0.05}}, 4.0 * mm}};
  const std::vector<CastingFinding> found = findings_of(layout);
  ASSERT_EQ(found.size(), 2u);
  expect_says(found[0], "square end at (30.0, 50.0) mm: put an inset spot of radius 3.0 mm");
  layout.chambers[0].inset_spots = {{{0.03, 0.05}, 3.0 * mm}, {{0.075, 0.05}, 3.0 * mm}};
  expect_nothing(layout);
}

TEST(CastingCheck, UnequalSheetsCurlTowardsTheStifferOne) {
  Layout layout = pair_of_chambers();
  layout.skin_sheet.thickness = 1.0 * mm;
  expect_nothing(layout);
  layout.skin_sheet.thickness = 0.9 * mm;
  const CastingFinding away = only(layout, CastingRule::kCurlThickness);
  EXPECT_NEAR(away.value, 2.0 / 0.9, 1e-9);
  expect_says(away, "is 2.2, more than 2");
  expect_says(away, "lift away from the skin");
  std::swap(layout.skin_sheet, layout.outer_sheet);
  expect_says(only(layout, CastingRule::kCurlThickness), "press towards the skin");
}

TEST(CastingCheck, AStifferGradeCurlsOnlyWhatNothingHolds) {
  Layout layout = pair_of_chambers();
  layout.outer_sheet.material = "A20";  // many times as stiff at the same thickness
  const CastingFinding finding = only(layout, CastingRule::kCurlStiffness);
  EXPECT_GT(finding.value, 3.0);
  layout.rim_bonded = true;
  expect_nothing(layout);
}

TEST(CastingCheck, ALongChamberTwistsUnlessANeighbourSharesItsSeam) {
  Layout layout = pair_of_chambers();
  layout.chambers.pop_back();
  layout.channels.clear();
  layout.chambers[0].boundary_m = rounded(0.02, 0.04, 0.08, 0.0202);
  layout.inlets[0].point_m = {0.06, 0.05};
  expect_nothing(layout);
  layout.chambers[0].boundary_m = rounded(0.02, 0.04, 0.08, 0.0198);
  const CastingFinding finding = only(layout, CastingRule::kTwistLength);
  EXPECT_NEAR(finding.value, 80.0 / 19.8, 0.01);
  expect_says(finding, "80.0 mm by 19.8 mm");
  layout.chambers.push_back({"beside", rounded(0.02, 0.068, 0.08, 0.0198), {}, {}});
  layout.inlets.push_back({"other", {0.06, 0.078}});
  expect_nothing(layout);
  layout.chambers[1].boundary_m = rounded(0.02, 0.0751, 0.08, 0.0189);  // 15.3 mm apart
  layout.inlets[1].point_m = {0.06, 0.084};
  EXPECT_EQ(findings_of(layout).size(), 2u);
}

TEST(CastingCheck, AnInletKeepsFourMillimetresFromTheWallAndFromInsetSeams) {
  Layout layout = pair_of_chambers();
  layout.inlets[0].point_m = {0.0181, 0.05};
  expect_nothing(layout);
  layout.inlets[0].point_m = {0.0179, 0.05};
  const CastingFinding finding = only(layout, CastingRule::kInletToSeam);
  EXPECT_NEAR(finding.value, 3.9, 1e-9);
  expect_says(finding, "inlet 'fill' at (17.9, 50.0) mm is 3.9 mm from the chamber's wall");
  layout.inlets[0].point_m = {0.054, 0.05};
  layout.chambers[0].inset_spots = {{{0.064, 0.05}, 6.5 * mm}};
  expect_says(only(layout, CastingRule::kInletToSeam), "from an inset seam");
}

}  // namespace
}  // namespace wrapgauge
