#include "model/casting/worn_layout.hpp"

#include <cmath>
#include <numbers>

#include "tables.hpp"
#include "tests/geometry/shapes.hpp"

namespace wrapgauge {
namespace {

constexpr double kRadius = 0.04;

// A pad of 60 x 60 mm on a cylinder, its middle at station 100 mm on the +x side.
struct OnCylinder {
  Body body;
  Layout layout;
  Placement placement;

  OnCylinder() {
    body.surface = shapes::tube(kRadius, kRadius, 0.2, 360, 40);
    layout.outline_m = {{0, 0}, {0.06, 0}, {0.06, 0.06}, {0, 0.06}};
    layout.chambers = {{"pad", {{0.01, 0.01}, {0.05, 0.01}, {0.05, 0.05}, {0.01, 0.05}}, {}, {}}};
    layout.inlets = {{"fill", {0.04, 0.03}}};
    layout.skin_sheet = layout.outer_sheet = {"00-30", 2.0 * mm};
    placement.anchor = AnchorAtStation{0.1 * metre, 0.0};
  }
  // Skin point of a place on the flat pad, by rolling it up.
  static Vec3 rolled(double x_m, double y_m) {
    const double angle = (x_m - 0.03) / kRadius;
    return {kRadius * std::cos(angle), kRadius * std::sin(angle), 0.1 + y_m - 0.03};
  }
};

TEST(WornLayout, PutsAnInletWhereTheRolledUpLayoutHasIt) {
  const OnCylinder on;
  const auto worn = wear_layout(on.body, on.layout, on.placement);
  ASSERT_TRUE(worn) << worn.problem().message;
  const auto skin = skin_point_of(*worn, {0.04, 0.03});
  ASSERT_TRUE(skin);
  EXPECT_LT((*skin - OnCylinder::rolled(0.04, 0.03)).norm(), 3e-4);
  EXPECT_FALSE(skin_point_of(*worn, {0.07, 0.03}));
}

TEST(WornLayout, FindsBonySitesOnTheFlatLayout) {
  const OnCylinder on;
  const auto worn = wear_layout(on.body, on.layout, on.placement);
  ASSERT_TRUE(worn);
  const std::vector<BonySite> sites = {{"under", OnCylinder::rolled(0.015, 0.045), 8.0 * mm, 3.0 * mm},
                                       {"beside", OnCylinder::rolled(0.065, 0.03), 8.0 * mm, 3.0 * mm},
                                       {"far", OnCylinder::rolled(0.075, 0.03), 8.0 * mm, 3.0 * mm}};
  const auto found = sites_on_layout(*worn, sites);
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].name, "under");
  EXPECT_LT((found[0].centre_m - Vec2(0.015, 0.045)).norm(), 3e-4);
  EXPECT_LT((found[1].centre_m - Vec2(0.06, 0.03)).norm(), 3e-4);
  EXPECT_NEAR(found[1].off_layout / mm, 5.0, 0.3);
}

TEST(WornLayout, AnInletNearABonySiteIsFoundAtItsThreshold) {
  const OnCylinder on;
  const auto worn = wear_layout(on.body, on.layout, on.placement);
  ASSERT_TRUE(worn);
  const auto findings = [&](double x_m, double y_m) {
    return check_worn_inlets(on.layout, *worn,
                             {{"styloid", OnCylinder::rolled(x_m, y_m), 10.0 * mm, 3.0 * mm}}, test::rules());
  };
  EXPECT_TRUE(findings(0.04, 0.03 + 0.0156).empty());
  const auto near = findings(0.04, 0.03 + 0.0144);
  ASSERT_EQ(near.size(), 1u);
  EXPECT_NEAR(near[0].value, 4.4, 0.3);
  EXPECT_NE(english(near[0].sentence).find("mm from the bony site 'styloid'"), std::string::npos)
      << english(near[0].sentence);
  EXPECT_NE(english(findings(0.04, 0.03)[0].sentence).find("lies over the bony site 'styloid', 0."),
            std::string::npos);
}

// The chamber's right wall lies at x = 50 mm; the site's middle on the pad's rim beyond it.
TEST(WornLayout, AChamberOverAKeepClearSiteIsFoundAndOneBesideItIsNot) {
  const OnCylinder on;
  const auto worn = wear_layout(on.body, on.layout, on.placement);
  ASSERT_TRUE(worn);
  const auto findings = [&](double x_m, SiteKind kind) {
    return check_worn_chambers(on.layout, *worn,
                               {{"peroneal", OnCylinder::rolled(x_m, 0.03), 4.0 * mm, 3.0 * mm, kind}},
                               test::rules());
  };
  EXPECT_TRUE(findings(0.0557, SiteKind::kBone).empty());  // 1.7 mm between them
  const auto near = findings(0.0545, SiteKind::kBone);     // 0.5 mm
  ASSERT_EQ(near.size(), 1u);
  EXPECT_NE(english(near[0].sentence).find("worn, chamber 'pad' comes within 0."), std::string::npos)
      << english(near[0].sentence);
  const auto over = findings(0.048, SiteKind::kNerve);
  ASSERT_EQ(over.size(), 1u);
  EXPECT_EQ(static_cast<int>(over[0].rule), static_cast<int>(CastingRule::kChamberToSite));
  EXPECT_NEAR(over[0].value, -4.0, 0.5);
  EXPECT_NE(english(over[0].sentence).find("worn, chamber 'pad' lies over the nerve 'peroneal' at (48."),
            std::string::npos)
      << english(over[0].sentence);
}

}  // namespace
}  // namespace wrapgauge
