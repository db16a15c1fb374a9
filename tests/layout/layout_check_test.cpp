#include "model/layout/layout_check.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "model/layout/flat_mesh.hpp"
#include "model/layout/layout_json.hpp"
#include "tests/layout/sample_layouts.hpp"

namespace wrapgauge {
namespace {

using test::four_chamber_cuff;
using test::rectangle;

std::string all(const Layout& layout) {
  std::string text;
  for (const Problem& problem : check_layout(layout)) text += problem.message + "\n";
  return text;
}

void expect_says(const Layout& layout, const std::string& words) {
  EXPECT_NE(all(layout).find(words), std::string::npos) << all(layout);
}

void expect_says_only(const Layout& layout, const std::string& words) {
  EXPECT_EQ(check_layout(layout).size(), 1u) << all(layout);
  expect_says(layout, words);
}

TEST(LayoutCheck, FindsNothingInASoundCuff) {
  EXPECT_EQ(all(four_chamber_cuff()), "");
}

TEST(LayoutCheck, NamesWhereAnOutlineOrChamberCrossesItself) {
  Layout layout = four_chamber_cuff();
  layout.outline_m = {{0, 0}, {0.26, 0.1}, {0.26, 0}, {0, 0.1}};
  expect_says(layout, "The outline crosses or touches itself at (130.0, 50.0) mm");
  layout = four_chamber_cuff();
  layout.chambers[0].boundary_m = {{0.02, 0.02}, {0.06, 0.08}, {0.06, 0.02}, {0.02, 0.08}};
  expect_says(layout, "Chamber 'chamber 1' crosses or touches itself at (40.0, 50.0) mm");
}

TEST(LayoutCheck, GivesTheAreaOfOverlappingChambers) {
  Layout layout = four_chamber_cuff();
  layout.chambers[1].boundary_m = rectangle(0.080, 0.02, 0.05, 0.05);
  layout.chambers[2].boundary_m = rectangle(0.120, 0.03, 0.05, 0.05);
  expect_says(layout, "Chamber 'chamber 2' and chamber 'chamber 3' overlap by 400.0 mm2");
}

TEST(LayoutCheck, SaysHowFarAChamberLeavesTheOutline) {
  Layout layout = four_chamber_cuff();
  layout.chambers[0].boundary_m = rectangle(-0.0035, 0.02, 0.06, 0.05);
  expect_says(layout, "Chamber 'chamber 1' leaves the outline by 3.5 mm");
}

TEST(LayoutCheck, NamesSeamsThinnerThanTheThickerSheet) {
  Layout layout = four_chamber_cuff();
  layout.chambers[2].boundary_m = rectangle(0.127, 0.02, 0.058, 0.06);
  expect_says_only(layout, "The seam between chamber 'chamber 2' and chamber 'chamber 3' is 2.0 mm wide");
  layout = four_chamber_cuff();
  layout.chambers[3].boundary_m = rectangle(0.195, 0.02, 0.0635, 0.06);
  expect_says_only(layout, "The seam between chamber 'chamber 4' and the outline is 1.5 mm wide");
}

TEST(LayoutCheck, NamesInsetSeamsOutsideOrTooNearTheWall) {
  Layout layout = four_chamber_cuff();
  layout.chambers[0].inset_spots = {{{0.04, 0.05}, 3.0 * mm}};
  EXPECT_EQ(all(layout), "");
  layout.chambers[0].inset_spots = {{{0.065, 0.03}, 3.0 * mm}};
  expect_says_only(layout, "Inset spot 1 of chamber 'chamber 1' reaches 3.0 mm outside");
  layout.chambers[0].inset_spots = {{{0.04, 0.019}, 3.0 * mm}};
  expect_says_only(layout, "Inset spot 1 of chamber 'chamber 1' is 1.0 mm from the chamber's wall");
  layout.chambers[0].inset_spots.clear();
  layout.chambers[0].inset_lines = {{{{0.04, 0.03}, {0.04, 0.084}}, 2.0 * mm}};
  expect_says_only(layout, "Inset line 1 of chamber 'chamber 1' is 1.0 mm from");
}

TEST(LayoutCheck, NamesInletsAndChambersThatAreNotJoined) {
  Layout layout = four_chamber_cuff();
  layout.inlets[1].point_m = {0.130, 0.005};
  expect_says(layout, "Inlet 'right' at (130.0, 5.0) mm feeds nothing");
  expect_says(layout, "No inlet reaches chamber 'chamber 3'");
  expect_says(layout, "No inlet reaches chamber 'chamber 4'");
  layout = four_chamber_cuff();
  layout.inlets[1].point_m = {0.10, 0.05};
  expect_says(layout, "Inlets 'left' and 'right' both feed chamber 'chamber 2'");
}

TEST(LayoutCheck, NamesChannelsThatLeadNowhere) {
  Layout layout = four_chamber_cuff();
  layout.channels.push_back({"lost", {{0.1, 0.008}, {0.2, 0.008}}, 4.0 * mm});
  expect_says_only(layout, "Channel 'lost' from (100.0, 8.0) mm to (200.0, 8.0) mm joins nothing");
  layout.channels.back().path_m = {{0.11, 0.03}, {0.13, 0.03}};
  expect_says_only(layout, "Channel 'lost' from (110.0, 30.0) mm to (130.0, 30.0) mm joins only one part");
}

TEST(LayoutCheck, NamesAnInletThatFeedsChannelsAlone) {
  Layout layout = four_chamber_cuff();
  layout.channels.push_back({"lost", {{0.1, 0.008}, {0.2, 0.008}}, 4.0 * mm});
  layout.inlets.push_back({"second", {0.15, 0.008}});
  expect_says_only(layout, "Inlet 'second' at (150.0, 8.0) mm feeds no chamber, only a channel");
  // Three that join one another in a ring, each of them two parts.
  layout.outline_m = rectangle(0.0, 0.0, layout.outline_m[1].x(), 0.2);
  layout.channels.back().path_m = {{0.10, 0.16}, {0.16, 0.16}};
  layout.channels.push_back({"up", {{0.10, 0.16}, {0.10, 0.19}}, 4.0 * mm});
  layout.channels.push_back({"back", {{0.10, 0.19}, {0.16, 0.19}, {0.16, 0.16}}, 4.0 * mm});
  layout.inlets.back().point_m = {0.13, 0.16};
  expect_says(layout, "Inlet 'second' at (130.0, 160.0) mm feeds no chamber, only a channel");
}

TEST(LayoutCheck, NamesStrapsAndClosuresThatDoNotFit) {
  Layout layout = four_chamber_cuff();
  layout.straps[0].boundary_m = rectangle(0.2615, 0.02, 0.04, 0.06);
  expect_says(layout, "Strap 'strap' shares no edge with the outline (1.5 mm away)");
  layout = four_chamber_cuff();
  layout.closure->closing_length = Length(0.3125);
  expect_says_only(layout, "12.5 mm too short");
  layout.closure->closing_length = Length(0.240);
  expect_says_only(layout, "Chamber 'chamber 4' reaches 5.0 mm beyond");
  layout.closure = Closure{-0.01, std::nullopt, 0.05};
  expect_says_only(layout, "10.0 mm before the layout begins");
  layout.closure = Closure{0.0, Length(0.29), 0.05};
  expect_says_only(layout, "exactly one");
}

TEST(LayoutCheck, NamesRepeatedNamesThicknessAndAbsurdSizes) {
  Layout layout = four_chamber_cuff();
  layout.chambers[3].name = "chamber 1";
  layout.inlets[0].name = "";
  layout.skin_sheet.thickness = Length(0.0);
  expect_says(layout, "Two chambers are named 'chamber 1'");
  expect_says(layout, "inlet 1 has no name");
  expect_says(layout, "The skin sheet is 0 mm thick");
  EXPECT_EQ(check_layout(layout).size(), 3u);
  for (const double scale : {0.01, 100.0}) {
    layout = four_chamber_cuff();
    for (Vec2& p : layout.outline_m) p *= scale;
    expect_says(layout, "should lie between 5 and 3000 mm");
  }
}

TEST(LayoutCheck, AnswersUnusableNumbersAlone) {
  Layout layout = four_chamber_cuff();
  layout.chambers[1].boundary_m[0].x() = std::nan("");
  expect_says_only(layout, "Chamber 'chamber 2' has a coordinate that is not a finite number");
  expect_says_only(Layout{}, "The outline has 0 points");
}

TEST(LayoutCheck, PassesTheShippedLayoutsWhichTriangulate) {
  const std::filesystem::path folder = std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources" / "layouts";
  for (const auto& [file, groups, girths] : {std::tuple{"forearm-cuff.json", 2u, std::pair{0.250, 0.285}},
                                             std::tuple{"calf-sleeve.json", 1u, std::pair{0.340, 0.390}}}) {
    const Result<Layout> layout = read_layout(folder / file);
    ASSERT_TRUE(layout) << layout.problem().message;
    EXPECT_EQ(all(*layout), "") << file;
    for (const double girth : {girths.first, girths.second}) {
      const Length closing(girth / (1.0 + *layout->closure->stretch));
      const auto mesh = triangulate_layout(*layout, closing, {});
      ASSERT_TRUE(mesh) << mesh.problem().message;
      EXPECT_EQ(mesh->group_inlet.size(), groups);
      EXPECT_GT(mesh->vertices_m.rows(), 1000);
      EXPECT_LT(mesh->vertices_m.rows(), 5000);
      EXPECT_NEAR(mesh->vertices_m.col(0).maxCoeff(), closing.si(), 1e-12);
    }
  }
}

}  // namespace
}  // namespace wrapgauge
