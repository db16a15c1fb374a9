#include "model/layout/forms/layout_form.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <numbers>

#include "model/layout/forms/form_dimensions.hpp"
#include "model/layout/layout_check.hpp"
#include "model/layout/layout_json.hpp"
#include "tests/casting/tables.hpp"

namespace wrapgauge {
namespace {

double width_at_m(const Layout& layout, bool top) {
  const Bounds2 box = bounds(layout.outline_m);
  double low = 1e9, high = -1e9;
  for (const Vec2& p : layout.outline_m)
    if (std::abs(p.y() - (top ? box.high.y() : box.low.y())) < 1e-9)
      low = std::min(low, p.x()), high = std::max(high, p.x());
  return high - low;
}

Layout made(const std::string& name, const std::map<std::string, double>& values = {}) {
  auto layout = make_layout(name, values);
  EXPECT_TRUE(layout) << layout.problem().message;
  return layout ? *layout : Layout{};
}

std::string refusal(const std::string& name, const std::map<std::string, double>& values) {
  const auto layout = make_layout(name, values);
  return layout ? "" : layout.problem().message;
}

class EveryForm : public testing::TestWithParam<std::string> {};

TEST_P(EveryForm, KeepsToEveryCheckAndRuleByDefault) {
  const Layout layout = made(GetParam());
  for (const Problem& problem : check_layout(layout)) ADD_FAILURE() << problem.message;
  for (const CastingFinding& finding : test::findings_of(layout)) ADD_FAILURE() << english(finding.sentence);
}

TEST_P(EveryForm, ComesBackFromItsFileTheSame) {
  const Layout layout = made(GetParam());
  const auto json = layout_to_json(layout);
  const auto again = layout_from_json(json, "again");
  ASSERT_TRUE(again) << again.problem().message;
  EXPECT_EQ(layout_to_json(*again), json);
  for (const Problem& problem : check_layout(*again)) ADD_FAILURE() << problem.message;
  for (std::size_t i = 0; i < layout.chambers.size(); ++i)
    EXPECT_NEAR(signed_area_m2(again->chambers[i].boundary_m), signed_area_m2(layout.chambers[i].boundary_m),
                1e-4 * signed_area_m2(layout.chambers[i].boundary_m));
}

// Each parameter at both ends of its range: a layout (make_layout checks it), or one clear sentence.
TEST_P(EveryForm, AnswersTheEndsOfEachRange) {
  const auto form = find_layout_form(GetParam());
  ASSERT_TRUE(form);
  for (const LayoutParameter& parameter : form->parameters) {
    EXPECT_FALSE(parameter.source.empty());
    for (const double value : {parameter.least, parameter.most}) {
      const auto layout = make_layout(GetParam(), {{parameter.name, value}});
      if (!layout) {
        EXPECT_EQ(layout.problem().message.back(), '.') << layout.problem().message;
      }
    }
    EXPECT_NE(refusal(GetParam(), {{parameter.name, parameter.most + 1.0}}).find(parameter.name),
              std::string::npos);
  }
}

INSTANTIATE_TEST_SUITE_P(LayoutForm, EveryForm,
                         testing::Values("cuff", "sleeve", "graduated-sleeve", "round-pad", "quilted-pack"),
                         [](const auto& of) {
                           std::string name = of.param;
                           std::replace(name.begin(), name.end(), '-', '_');
                           return name;
                         });

TEST(LayoutForm, ACuffIsAsWideAsTheGirthLessItsStretch) {
  const Layout layout = made("cuff", {{"girth", 306.0}, {"stretch", 0.02}, {"chambers", 5}, {"rows", 2}});
  EXPECT_NEAR(width_at_m(layout, false), 0.300, 1e-12);
  EXPECT_EQ(layout.chambers.size(), 10u);
  EXPECT_EQ(layout.channels.size(), 8u);
  EXPECT_EQ(layout.inlets.size(), 2u);
  EXPECT_EQ(layout.closure->taper, 0.0);
}

TEST(LayoutForm, ACuffGrowsFromItsDistalToItsProximalEdge) {
  const Layout layout = made(
      "cuff", {{"girth", 204.0}, {"growth", 40.8}, {"stretch", 0.02}, {"height", 80.0}, {"chambers", 3}});
  EXPECT_NEAR(width_at_m(layout, false), 0.180, 1e-12);
  EXPECT_NEAR(width_at_m(layout, true), 0.220, 1e-12);
  EXPECT_NEAR(layout.closure->taper, 0.5, 1e-12);
  EXPECT_NE(refusal("cuff", {{"girth", 100.0}, {"growth", 300.0}}).find("less than 40 mm at one edge"),
            std::string::npos);
}

// The outer sheet's middle lies 1.5 + 0.5 * 2 mm off the skin: a circle of girth 300 mm there is 2 pi 2.5 mm
// longer.
TEST(LayoutForm, WhatIsNotGivenIsFittedSoThatTheOuterSheetMeetsWithoutStretch) {
  const double around = 0.300 + 2.0 * std::numbers::pi * 2.5e-3;
  EXPECT_NEAR(width_at_m(made("cuff", {{"girth", 300.0}}), false), around, 1e-12);
  const Layout graduated = made("graduated-sleeve", {{"girth-distal", 300.0}, {"girth-proximal", 300.0}});
  EXPECT_NEAR(width_at_m(graduated, false), around / 1.03, 1e-12);
  EXPECT_NEAR(width_at_m(graduated, true), around, 1e-12);
  const auto thick = make_layout("cuff", {{"girth", 300.0}}, {Sheet{"A2", 4.0 * mm}, std::nullopt});
  ASSERT_TRUE(thick);
  EXPECT_NEAR(width_at_m(*thick, false), 0.300 + 2.0 * std::numbers::pi * 5.0e-3, 1e-12);
  EXPECT_NEAR(*thick->closure->stretch, 0.300 / width_at_m(*thick, false) - 1.0, 1e-12);
}

TEST(LayoutForm, APackIsHeldByAStrapThatClosesRoundTheLimbUnlessItIsLeftOut) {
  const Layout pack = made("quilted-pack", {{"girth", 400.0}, {"stretch", 0.0}});
  ASSERT_EQ(pack.straps.size(), 1u);
  EXPECT_TRUE(is_held(pack));
  EXPECT_NEAR(bounds(pack.straps[0].boundary_m).high.x(), 0.440, 1e-12);
  EXPECT_NEAR(bounds(pack.straps[0].boundary_m).low.x(), 0.160, 1e-12);
  EXPECT_FALSE(is_held(made("quilted-pack", {{"strap-width", 0.0}})));
  EXPECT_NE(refusal("quilted-pack", {{"strap-width", 110.0}}).find("make the strap narrower"),
            std::string::npos);
}

TEST(LayoutForm, ASleeveTapersWithTheGirths) {
  const Layout layout = made(
      "sleeve", {{"girth-distal", 210.0}, {"girth-proximal", 315.0}, {"stretch", 0.05}, {"height", 200.0}});
  EXPECT_NEAR(width_at_m(layout, false), 0.200, 1e-12);
  EXPECT_NEAR(width_at_m(layout, true), 0.300, 1e-12);
  EXPECT_NEAR(layout.closure->taper, 0.5, 1e-12);
  EXPECT_NEAR(*layout.closure->stretch, 0.05, 1e-12);
}

// Widths of 200, 275 and 300 mm: 25 mm more halfway than straight sides have.
TEST(LayoutForm, ASleeveBendsWhereTheLimbBulgesAndKeepsToEveryRule) {
  for (const double bands : {1.0, 2.0, 3.0}) {
    SCOPED_TRACE(bands);
    const Layout layout = made("sleeve", {{"girth-distal", 210.0},
                                          {"girth-proximal", 315.0},
                                          {"bulge", 26.25},
                                          {"stretch", 0.05},
                                          {"height", 200.0},
                                          {"bands", bands}});
    EXPECT_NEAR(width_at_m(layout, false), 0.200, 1e-12);
    EXPECT_NEAR(width_at_m(layout, true), 0.300, 1e-12);
    const auto halfway = ends_across(layout.outline_m, 0.1);
    ASSERT_TRUE(halfway);
    EXPECT_NEAR(halfway->second - halfway->first, 0.275, 1e-12);
    EXPECT_NEAR(layout.closure->taper, 0.5, 1e-12);
    EXPECT_NEAR(layout.closure->bend, 0.25, 1e-12);
    EXPECT_NEAR(*layout.closure->stretch, 0.05, 1e-12);
    for (const CastingFinding& finding : test::findings_of(layout))
      ADD_FAILURE() << english(finding.sentence);
  }
  EXPECT_NE(refusal("sleeve", {{"girth-distal", 200.0}, {"girth-proximal", 200.0}, {"bulge", -180.0}})
                .find("less than 40 mm at its middle"),
            std::string::npos);
}

TEST(LayoutForm, AGraduatedSleeveIsTighterDistally) {
  const Layout layout = made("graduated-sleeve", {{"girth-distal", 220.0},
                                                  {"girth-proximal", 306.0},
                                                  {"stretch-distal", 0.10},
                                                  {"stretch-proximal", 0.02}});
  EXPECT_NEAR(width_at_m(layout, false), 0.200, 1e-12);
  EXPECT_NEAR(width_at_m(layout, true), 0.300, 1e-12);
  EXPECT_NE(refusal("graduated-sleeve", {{"stretch-distal", 0.01}, {"stretch-proximal", 0.02}})
                .find("tighter at its distal end"),
            std::string::npos);
}

TEST(LayoutForm, APadHasItsRingsAndSpots) {
  const Layout layout = made("round-pad", {{"rings", 2}, {"spots", 6}, {"diameter", 100.0}, {"seam", 6.0}});
  ASSERT_EQ(layout.chambers.size(), 3u);
  EXPECT_EQ(layout.chambers[0].inset_spots.size(), 0u);
  EXPECT_EQ(layout.chambers[2].inset_spots.size(), 6u);
  EXPECT_EQ(layout.inlets.size(), 3u);
  EXPECT_TRUE(layout.rim_bonded);
  EXPECT_NE(refusal("round-pad", {{"girth", 200.0}}).find("make a cuff instead"), std::string::npos);
}

TEST(LayoutForm, APackIsQuiltedByAGridThatCoversItsShareOfTheGirth) {
  const Layout layout = made("quilted-pack", {{"girth", 400.0}, {"cover", 0.5}, {"height", 128.0}});
  EXPECT_NEAR(bounds(layout.outline_m).high.x(), 0.200, 1e-12);
  EXPECT_EQ(layout.chambers[0].inset_spots.size(), 7u * 4u);  // 176 and 104 mm in cells of about 26 mm
}

TEST(LayoutForm, SaysWhatItDoesNotKnowAndWhatHasNoRoom) {
  EXPECT_NE(refusal("glove", {}).find("there are: cuff, sleeve"), std::string::npos);
  EXPECT_NE(refusal("cuff", {{"girths", 3.0}}).find("has no parameter \"girths\""), std::string::npos);
  EXPECT_NE(refusal("cuff", {{"chambers", 2.5}}).find("whole number"), std::string::npos);
  EXPECT_NE(refusal("cuff", {{"chambers", 16}}).find("at least 8 mm are needed"), std::string::npos);
  EXPECT_NE(refusal("cuff", {{"girth", std::nan("")}}).find("girth"), std::string::npos);
}

TEST(LayoutForm, TakesOtherSheets) {
  const auto layout = make_layout("cuff", {}, {Sheet{"A2", 2.0 * mm}, std::nullopt});
  ASSERT_TRUE(layout);
  EXPECT_EQ(layout->skin_sheet.material, "A2");
  EXPECT_EQ(layout->outer_sheet.material, "A10");
}

}  // namespace
}  // namespace wrapgauge
