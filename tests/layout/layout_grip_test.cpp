#include "model/layout/layout_grip.hpp"

#include <gtest/gtest.h>

#include "tests/layout/sample_layouts.hpp"

namespace wrapgauge {
namespace {

using Kind = LayoutGrip::Kind;

Layout two_pads_closed_by_stretch() {
  Layout layout = test::bare_layout(0.07, 0.06);
  layout.chambers = {{"left", test::rectangle(0.005, 0.01, 0.027, 0.04), {}, {}},
                     {"right", test::rectangle(0.038, 0.01, 0.027, 0.04), {}, {}}};
  layout.closure = Closure{0.0, {}, 0.05, 0.0};
  return layout;
}

TEST(LayoutGrip, APointGoesAloneAndTheFirstClosingLineTakesTheSecondAlong) {
  Layout layout = two_pads_closed_by_stretch();
  const Layout point = with_grip_moved(
      layout, {Kind::kPoint, LayoutPart{LayoutPart::Kind::kChamber, 1, 0}, 2}, {1e-3, 2e-3}, {});
  EXPECT_NEAR((point.chambers[1].boundary_m[2] - layout.chambers[1].boundary_m[2] - Vec2(1e-3, 2e-3)).norm(),
              0.0, 1e-15);
  EXPECT_EQ(point.chambers[1].boundary_m[1], layout.chambers[1].boundary_m[1]);
  layout.closure = Closure{0.0, 60.0 * mm, {}, 0.0};
  const Layout first = with_grip_moved(layout, {Kind::kFirstLine, {}, 0}, {3e-3, 9e-3}, {});
  EXPECT_NEAR(first.closure->from_x_m, 0.003, 1e-15);
  EXPECT_EQ(first.closure->closing_length, layout.closure->closing_length);
}

// girth = closing length (1 + stretch) before and after.
TEST(LayoutGrip, TheSecondClosingLineChangesTheLengthOrTheStretchThatGivesIt) {
  Layout layout = two_pads_closed_by_stretch();
  const LayoutGrip second{Kind::kSecondLine, {}, 0};
  const Layout stretched = with_grip_moved(layout, second, {-6e-3, 0.0}, 60.0 * mm);
  EXPECT_NEAR(54.0 * (1.0 + *stretched.closure->stretch), 60.0 * 1.05, 1e-9);
  EXPECT_EQ(with_grip_moved(layout, second, {-6e-3, 0.0}, {}).closure->stretch, 0.05) << "no length is known";
  layout.closure = Closure{0.0, 60.0 * mm, {}, 0.0};
  EXPECT_NEAR(with_grip_moved(layout, second, {4e-3, 0.0}, {}).closure->closing_length->si(), 0.064, 1e-12);
  EXPECT_NEAR(with_grip_moved(layout, second, {-1.0, 0.0}, {}).closure->closing_length->si(), 0.001, 1e-12);
}

}  // namespace
}  // namespace wrapgauge
