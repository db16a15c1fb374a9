#include "app/desk/session/layout_part.hpp"

#include "model/layout/layout_check.hpp"
#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

using Kind = LayoutPart::Kind;

TEST(LayoutPart, AStrapGoesOnTheRightThenOnTheLeftAndPassesTheChecks) {
  const Layout before = small_layout();
  const Layout one = with_new_part(before, Kind::kStrap, 0);
  ASSERT_EQ(one.straps.size(), 1U);
  EXPECT_EQ(one.straps[0].name, "strap 1");
  EXPECT_NEAR(bounds(one.straps[0].boundary_m).low.x(), 0.03, 1e-12);
  EXPECT_GT(one.straps[0].stiffness / N_per_mm, 0.0);
  EXPECT_TRUE(check_layout(one).empty()) << check_layout(one).front().message;
  const Layout two = with_new_part(one, Kind::kStrap, 0);
  ASSERT_EQ(two.straps.size(), 2U);
  EXPECT_EQ(two.straps[1].name, "strap 2");
  EXPECT_NEAR(bounds(two.straps[1].boundary_m).high.x(), -0.03, 1e-12);
  EXPECT_TRUE(check_layout(two).empty()) << check_layout(two).front().message;
}

TEST(LayoutPart, AStrapFindsItsEdgeOnARoundedOutlineEitherWayRound) {
  Layout layout = small_layout();
  layout.outline_m = {{-0.03, -0.03}, {0.028, -0.03}, {0.03, -0.028},
                      {0.03, 0.028},  {0.028, 0.03},  {-0.03, 0.03}};
  for (int way = 0; way < 2; ++way) {
    const Layout strapped = with_new_part(layout, Kind::kStrap, 0);
    EXPECT_TRUE(check_layout(strapped).empty()) << check_layout(strapped).front().message;
    EXPECT_GT(signed_area_m2(strapped.straps[0].boundary_m), 0.0);
    std::reverse(layout.outline_m.begin(), layout.outline_m.end());
  }
}

TEST(LayoutPart, ANewPartIsTakenAwayAgain) {
  const Layout before = small_layout();
  for (const Kind kind :
       {Kind::kChamber, Kind::kInsetSpot, Kind::kInsetLine, Kind::kChannel, Kind::kInlet, Kind::kStrap}) {
    const Layout more = with_new_part(before, kind, 0);
    const auto parts = layout_parts(more);
    EXPECT_EQ(parts.size(), layout_parts(before).size() + 1);
    LayoutPart added = parts.back();
    for (const LayoutPart& part : parts)
      if (part.kind == kind) added = part;
    EXPECT_EQ(layout_parts(without_part(more, added)).size(), layout_parts(before).size());
  }
}

}  // namespace
}  // namespace wrapgauge
