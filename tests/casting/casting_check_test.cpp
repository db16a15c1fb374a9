#include "model/casting/casting_check.hpp"

#include <algorithm>
#include <array>
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
  if (found.empty()) {
    ADD_FAILURE() << "nothing was found";
    return {};
  }
  EXPECT_EQ(found.size(), 1u) << english(found.back().sentence);
  EXPECT_EQ(static_cast<int>(found.front().rule), static_cast<int>(rule)) << english(found.front().sentence);
  return found.front();
}

void expect_says(const CastingFinding& finding, const std::string& words) {
  EXPECT_NE(english(finding.sentence).find(words), std::string::npos) << english(finding.sentence);
}

void expect_nothing(const Layout& layout) {
  EXPECT_TRUE(check_layout(layout).empty()) << check_layout(layout).front().message;
  for (const CastingFinding& finding : findings_of(layout)) ADD_FAILURE() << english(finding.sentence);
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

// Two quarters of a circle that all but meet: the 0.1 mm of straight side between them is no sharp corner. A
// step to the side of the same length is one.
TEST(Corners, AShortSideBetweenTwoCurvesIsNoneOfItsOwn) {
  const auto least = [](const Polygon& loop) {
    double radius = 1.0;
    for (const Corner& corner : corners(loop)) radius = std::min(radius, corner.radius_m);
    return radius;
  };
  EXPECT_NEAR(least(flattened_rectangle({0, 0}, {0.0161, 0.05}, 0.008, 5e-5)), 0.008, 8e-4);
  EXPECT_LT(least({{0, 0}, {0.05, 0}, {0.05, 0.02}, {0.0502, 0.02}, {0.0502, 0.04}, {0, 0.04}}), 2e-4);
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
  layout.chambers[0].inset_spots = {{{0.054, 0.05}, 4.0 * mm}};
  layout.chambers[1].inset_spots = {{{0.146, 0.05}, 4.0 * mm}};
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
  expect_says(only(layout, CastingRule::kInletToSeam), "is 3.5 mm from inset spot 1 of chamber 'left'");
}

// Three narrow chambers in a row: the channels' ends lie 2 mm apart inside the middle one.
TEST(CastingCheck, TwoChannelsThatEndInOneChamberHaveNoSeamBetweenThem) {
  Layout layout = pair_of_chambers();
  layout.chambers = {{"left", rounded(0.014, 0.014, 0.05, 0.072), {}, {}},
                     {"middle", rounded(0.074, 0.014, 0.0281, 0.072), {}, {}},
                     {"right", rounded(0.1121, 0.014, 0.05, 0.072), {}, {}}};
  layout.channels = {{"one", {{0.058, 0.05}, {0.087, 0.05}}, 5.0 * mm},
                     {"other", {{0.089, 0.05}, {0.118, 0.05}}, 5.0 * mm}};
  layout.inlets[0].point_m = {0.04, 0.07};
  expect_nothing(layout);
}

TEST(CastingCheck, TwoChannelsSideBySideHaveOne) {
  Layout layout = pair_of_chambers();
  const auto beside = [&](double apart) {
    layout.channels = {{"low", {{0.088, 0.03}, {0.112, 0.03}}, 5.0 * mm},
                       {"high", {{0.088, 0.035 + apart}, {0.112, 0.035 + apart}}, 5.0 * mm}};
  };
  beside(0.0061);
  expect_nothing(layout);
  beside(0.003);
  const CastingFinding finding = only(layout, CastingRule::kSeamWidth);
  EXPECT_NEAR(finding.value, 3.0, 1e-9);
  expect_says(finding, "between channel 'low' and channel 'high' is 3.0 mm wide");
}

// Rounding makes 6 mm a hair less; what is really less shows the digits that differ.
TEST(CastingCheck, NoLengthIsSaidToBeLessThanItself) {
  Layout layout = pair_of_chambers();
  layout.chambers[1].boundary_m = rounded(0.1 - 2e-6, 0.014, 0.08, 0.072);
  expect_nothing(layout);
  layout.chambers[1].boundary_m = rounded(0.1 - 2e-5, 0.014, 0.08, 0.072);
  expect_says(only(layout, CastingRule::kSeamWidth), "is 5.98 mm wide");
  expect_says(only(layout, CastingRule::kSeamWidth), "(6.00 mm)");
  layout = pair_of_chambers();
  layout.inlets[0].point_m = {0.018 - 2e-5, 0.05};
  expect_says(only(layout, CastingRule::kInletToSeam),
              "is 3.98 mm from the chamber's wall, less than 4.00 mm");
}

// From the one chamber out along the rim and back to the other.
TEST(CastingCheck, AChannelKeepsItsSeamToTheRim) {
  Layout layout = pair_of_chambers();
  const auto along_rim = [&](double y) {
    layout.outline_m = {{0, -0.03}, {0.2, -0.03}, {0.2, 0.1}, {0, 0.1}};
    layout.channels = {{"detour", {{0.05, 0.02}, {0.05, y}, {0.15, y}, {0.15, 0.02}}, 5.0 * mm}};
  };
  along_rim(-0.0214);  // 6.1 mm of rim
  expect_nothing(layout);
  along_rim(-0.0216);
  const CastingFinding finding = only(layout, CastingRule::kSeamWidth);
  EXPECT_NEAR(finding.value, 5.9, 1e-9);
  expect_says(finding, "between channel 'detour' and the outline");
}

// A tube leaves through the rim: the channel runs up to the outline beside its inlet.
TEST(CastingCheck, AChannelMayRunUpToTheOutlineWhereItsTubeLeaves) {
  Layout layout = pair_of_chambers();
  for (const double end : {0.1, 0.0999, 0.098}) {
    layout.channels.resize(1);
    layout.channels.push_back({"tube", {{0.054, 0.08}, {0.054, end}}, 5.0 * mm});
    layout.inlets[0].point_m = {0.054, end - 0.001};
    expect_nothing(layout);
  }
}

// A channel that turns back beside itself, its two legs 3 mm apart.
TEST(CastingCheck, AChannelKeepsItsSeamToItself) {
  Layout layout = pair_of_chambers();
  const auto turned_back = [&](double apart) {
    const double x = 0.0985, back = x + 0.005 + apart;
    layout.chambers[1].boundary_m = rounded(0.126, 0.014, 0.06, 0.072);
    layout.channels = {{"hairpin",
                        {{0.088, 0.03},
                         {x + 0.005, 0.03},
                         {x + 0.005, 0.07},
                         {back + 0.005, 0.07},
                         {back + 0.005, 0.03},
                         {0.132, 0.03}},
                        5.0 * mm}};
  };
  turned_back(0.0061);
  expect_nothing(layout);
  turned_back(0.003);
  const CastingFinding finding = only(layout, CastingRule::kSeamWidth);
  EXPECT_NEAR(finding.value, 3.0, 1e-9);
  expect_says(finding, "the seam between two places of channel 'hairpin' is 3.0 mm wide");
}

TEST(CastingCheck, AnInletOnAWeldIsFound) {
  Layout layout = pair_of_chambers();
  layout.chambers[0].inset_spots = {{{0.054, 0.05}, 10.0 * mm}};
  layout.inlets[0].point_m = {0.054, 0.05};  // in the spot's middle, 10 mm from its edge
  expect_says(
      only(layout, CastingRule::kInletToSeam),
      "inlet 'fill' at (54.0, 50.0) mm lies on inset spot 1 of chamber 'left', where the sheets are fused");
  layout.inlets[0].point_m = {0.054, 0.07};  // 10 mm beyond it
  expect_nothing(layout);
  layout.inlets[0].point_m = {0.0135, 0.05};
  expect_says(only(layout, CastingRule::kInletToSeam), "lies on the seam round chamber 'left'");
  layout.inlets[0].point_m = {0.1, 0.0531};  // the channel's edge lies at 52.5 mm
  expect_says(only(layout, CastingRule::kInletToSeam), "lies on the seam beside channel 'bridge'");
  layout.inlets[0].point_m = {0.1, 0.0524};
  expect_nothing(layout);
}

// The thinner sheet is 1.5 mm: 90 mm without a weld are allowed.
TEST(CastingCheck, AWideChamberNeedsWeldsInIt) {
  Layout layout = pair_of_chambers();
  layout.outline_m = {{0, 0}, {0.2, 0}, {0.2, 0.2}, {0, 0.2}};
  layout.chambers = {{"wide", rounded(0.02, 0.02, 0.0898, 0.16), {}, {}}};
  layout.channels.clear();
  layout.inlets[0].point_m = {0.06, 0.05};
  expect_nothing(layout);
  layout.chambers[0].boundary_m = rounded(0.02, 0.02, 0.0902, 0.16);
  const CastingFinding finding = only(layout, CastingRule::kChamberMost);
  EXPECT_NEAR(finding.value, 90.2, 0.02);
  expect_says(finding, "chamber 'wide' has no seam within a circle of 90.2 mm");
  layout.chambers[0].inset_spots = {{{0.065, 0.07}, 4.0 * mm}, {{0.065, 0.13}, 4.0 * mm}};
  expect_nothing(layout);
}

// The thicker sheet is 2 mm: a chamber opens from 8 mm on.
TEST(CastingCheck, ANarrowChamberHardlyOpens) {
  Layout layout = pair_of_chambers();
  layout.chambers = {{"slit", rounded(0.014, 0.014, 0.03, 0.0081, 0.0035), {}, {}}};
  layout.channels.clear();
  layout.inlets[0].point_m = {0.03, 0.01805};
  expect_nothing(layout);
  layout.chambers[0].boundary_m = rounded(0.014, 0.014, 0.03, 0.0079, 0.0035);
  for (const CastingFinding& finding : findings_of(layout)) {
    if (finding.rule == CastingRule::kInletToSeam) continue;  // no inlet has room in it
    EXPECT_EQ(static_cast<int>(finding.rule), static_cast<int>(CastingRule::kChamberLeast));
    EXPECT_NEAR(finding.value, 7.9, 0.01);
    expect_says(finding, "chamber 'slit' is nowhere wider than 7.9 mm");
  }
  EXPECT_EQ(findings_of(layout).size(), 2u);
}

Layout with_neck(double neck) {
  Layout layout = pair_of_chambers();
  const double low = 0.05 - 0.5 * neck, high = 0.05 + 0.5 * neck;
  layout.chambers = {{"waist",
                      {{0.02, 0.02},
                       {0.06, 0.02},
                       {0.06, low},
                       {0.07, low},
                       {0.07, 0.02},
                       {0.11, 0.02},
                       {0.11, 0.08},
                       {0.07, 0.08},
                       {0.07, high},
                       {0.06, high},
                       {0.06, 0.08},
                       {0.02, 0.08}},
                      {},
                      {}}};
  layout.channels.clear();
  layout.inlets[0].point_m = {0.04, 0.05};
  return layout;
}

TEST(CastingCheck, ANeckOfAChamberIsAsWideAsAChannelHasToBe) {
  const auto necks = [](double width) {
    std::vector<CastingFinding> found = findings_of(with_neck(width));
    std::erase_if(found, [](const CastingFinding& one) { return one.rule == CastingRule::kCornerRadius; });
    return found;
  };
  EXPECT_TRUE(necks(0.0031).empty());
  const auto found = necks(0.0029);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_NEAR(found[0].value, 2.9, 1e-9);
  EXPECT_EQ(static_cast<int>(found[0].rule), static_cast<int>(CastingRule::kChannelLeast));
  expect_says(found[0], "chamber 'waist' has a neck of 2.9 mm at (");
}

TEST(CastingCheck, ASheetUnderHalfAMillimetreIsThin) {
  Layout layout = pair_of_chambers();
  layout.channels[0].width = 3.5 * mm;
  layout.chambers[0].inset_spots = {{{0.054, 0.04}, 4.0 * mm}};
  const auto thin = [&](double skin_mm, double outer_mm) {
    layout.skin_sheet.thickness = skin_mm * mm;
    layout.outer_sheet.thickness = outer_mm * mm;
    std::vector<CastingFinding> found = findings_of(layout);
    std::erase_if(found, [](const CastingFinding& one) { return one.rule != CastingRule::kSheetLeast; });
    return found;
  };
  EXPECT_TRUE(thin(0.5, 0.5).empty());
  ASSERT_EQ(thin(0.49, 0.5).size(), 1u);
  expect_says(thin(0.49, 0.5)[0], "the skin sheet is 0.49 mm thick, less than 0.50 mm");
  ASSERT_EQ(thin(0.5, 0.3).size(), 1u);
  expect_says(thin(0.5, 0.3)[0], "the outer sheet is 0.3 mm thick, less than 0.5 mm");
}

TEST(CastingCheck, ASharpNotchOfTheOutlineIsToldAndARoundOneIsNot) {
  Layout layout = pair_of_chambers();
  layout.outline_m = {{0, -0.02},   {0.095, -0.02}, {0.1, -0.01}, {0.105, -0.02},
                      {0.2, -0.02}, {0.2, 0.1},     {0, 0.1}};
  const CastingFinding finding = only(layout, CastingRule::kOutlineNotch);
  EXPECT_EQ(finding.place_m.value(), Vec2(0.1, -0.01));
  expect_says(finding, "the outline has a notch of 127 degrees at (100.0, -10.0) mm");
  layout.outline_m = {{0, -0.02}, {0.09, -0.02}};
  for (int k = 0; k <= 24; ++k) {  // half a circle of 10 mm
    const double angle = std::numbers::pi * (1.0 - k / 24.0);
    layout.outline_m.push_back(Vec2(0.1 + 0.01 * std::cos(angle), -0.02 + 0.01 * std::sin(angle)));
  }
  layout.outline_m.erase(layout.outline_m.begin() + 1);
  for (const Vec2& p : {Vec2(0.2, -0.02), Vec2(0.2, 0.1), Vec2(0, 0.1)}) layout.outline_m.push_back(p);
  for (const CastingFinding& one :
       findings_of(layout))  // its two square lips jut out, its round inside is fine
    ADD_FAILURE() << english(one.sentence);
}

// Balance of force and moment of two strips, solved here for the strain of the face and the curvature.
TEST(PrestretchCurl, BalancesForceAndMomentOfBothSheets) {
  const Sheet skin{"00-30", 1.2 * mm, 1.08}, outer{"A10", 2.1 * mm, 1.01};
  const double g_skin = 3.0, g_outer = 7.0, top = 1.2 + 2.1;
  // Strain at height z (mm, from the skin): e - z k, less each sheet's own.
  const double own = -std::log(1.08), other = -std::log(1.01);
  const auto integrals = [](double g, double low, double high) {
    return std::array{g * (high - low), g * (high * high - low * low) / 2.0,
                      g * (high * high * high - low * low * low) / 3.0};
  };
  const auto a = integrals(g_skin, 0.0, 1.2), b = integrals(g_outer, 1.2, top);
  // Force: (A0 + B0) e - (A1 + B1) k = A0 own + B0 other; moment alike.
  const double p = a[0] + b[0], q = a[1] + b[1], r = a[2] + b[2];
  const double f = a[0] * own + b[0] * other, m = a[1] * own + b[1] * other;
  const double k = (q * f - p * m) / (p * r - q * q);  // < 0: the skin's face is the shorter one
  const double curl = prestretch_curl(skin, outer, g_skin * kPa, g_outer * kPa);
  EXPECT_NEAR(curl / 1000.0, -k, 1e-12);
  EXPECT_GT(curl, 0.0);  // the skin sheet was stretched more, so the edges come towards the skin
}

TEST(CastingCheck, SheetsFusedAtUnequalStretchCurl) {
  Layout layout = pair_of_chambers();
  layout.skin_sheet.prestretch = 1.005;
  expect_nothing(layout);
  layout.skin_sheet.prestretch = 1.02;
  const CastingFinding towards = only(layout, CastingRule::kCurlPrestretch);
  EXPECT_GT(towards.value, 30.0);
  expect_says(towards, "fused at unequal stretch (skin 1.020, outer 1.000)");
  expect_says(towards, "its edges come towards the skin");
  layout.outer_sheet.prestretch = 1.02;
  expect_nothing(layout);
  layout.outer_sheet.prestretch = 1.0;
  layout.rim_bonded = true;
  expect_nothing(layout);
  std::swap(layout.skin_sheet.prestretch, layout.outer_sheet.prestretch);
  expect_says(only(layout, CastingRule::kCurlPrestretch), "its edges lift away from the skin");
}

}  // namespace
}  // namespace wrapgauge
