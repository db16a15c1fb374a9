#include "model/layout/layout_part.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "model/layout/layout_check.hpp"
#include "model/layout/part_edits.hpp"
#include "model/layout/part_numbers.hpp"

namespace wrapgauge {
namespace {

using PartKind = LayoutPart::Kind;

Polygon pad_square_m(double half) {
  return {{-half, -half}, {half, -half}, {half, half}, {-half, half}};
}

Layout square_pad() {
  Layout layout;
  layout.name = "square pad";
  layout.outline_m = pad_square_m(0.03);
  layout.chambers = {{"cell", pad_square_m(0.02), {}, {}}};
  layout.inlets = {{"tube", {0.0, 0.0}}};
  layout.skin_sheet = layout.outer_sheet = {"00-30", 2.0 * mm, 1.0};
  layout.rim_bonded = true;
  return layout;
}

TEST(LayoutPart, AStrapGoesOnTheRightThenOnTheLeftAndPassesTheChecks) {
  const Layout before = square_pad();
  const Layout one = with_new_part(before, PartKind::kStrap, 0);
  ASSERT_EQ(one.straps.size(), 1U);
  EXPECT_EQ(one.straps[0].name, "strap 1");
  EXPECT_NEAR(bounds(one.straps[0].boundary_m).low.x(), 0.03, 1e-12);
  EXPECT_GT(one.straps[0].stiffness / N_per_mm, 0.0);
  EXPECT_TRUE(check_layout(one).empty()) << check_layout(one).front().message;
  const Layout two = with_new_part(one, PartKind::kStrap, 0);
  ASSERT_EQ(two.straps.size(), 2U);
  EXPECT_EQ(two.straps[1].name, "strap 2");
  EXPECT_NEAR(bounds(two.straps[1].boundary_m).high.x(), -0.03, 1e-12);
  EXPECT_TRUE(check_layout(two).empty()) << check_layout(two).front().message;
}

TEST(LayoutPart, AStrapFindsItsEdgeOnARoundedOutlineEitherWayRound) {
  Layout layout = square_pad();
  layout.outline_m = {{-0.03, -0.03}, {0.028, -0.03}, {0.03, -0.028},
                      {0.03, 0.028},  {0.028, 0.03},  {-0.03, 0.03}};
  for (int way = 0; way < 2; ++way) {
    const Layout strapped = with_new_part(layout, PartKind::kStrap, 0);
    EXPECT_TRUE(check_layout(strapped).empty()) << check_layout(strapped).front().message;
    EXPECT_GT(signed_area_m2(strapped.straps[0].boundary_m), 0.0);
    std::reverse(layout.outline_m.begin(), layout.outline_m.end());
  }
}

TEST(LayoutPart, ANewPartIsTakenAwayAgain) {
  const Layout before = square_pad();
  for (const PartKind kind : {PartKind::kChamber, PartKind::kInsetSpot, PartKind::kInsetLine,
                              PartKind::kChannel, PartKind::kInlet, PartKind::kStrap}) {
    const Layout more = with_new_part(before, kind, 0);
    const auto parts = layout_parts(more);
    EXPECT_EQ(parts.size(), layout_parts(before).size() + 1);
    LayoutPart added = parts.back();
    for (const LayoutPart& part : parts)
      if (part.kind == kind) added = part;
    EXPECT_EQ(layout_parts(without_part(more, added)).size(), layout_parts(before).size());
  }
}

TEST(LayoutPart, EveryNumberOfEveryPartReadsBackAsItWasSet) {
  Layout layout = square_pad();
  for (const PartKind kind :
       {PartKind::kInsetSpot, PartKind::kInsetLine, PartKind::kChannel, PartKind::kStrap})
    layout = with_new_part(layout, kind, 0);
  for (const LayoutPart& part : layout_parts(layout)) {
    const auto numbers = part_numbers(layout, part);
    for (std::size_t i = 0; i < numbers.size(); ++i) {
      const Layout changed = with_number(layout, part, i, numbers[i].value + 1.5);
      const auto now = part_numbers(changed, part);
      ASSERT_EQ(now.size(), numbers.size());
      EXPECT_NEAR(now[i].value, numbers[i].value + 1.5, 1e-9)
          << english(part_title(layout, part)) << ", " << english(numbers[i].name);
    }
  }
}

}  // namespace
}  // namespace wrapgauge
