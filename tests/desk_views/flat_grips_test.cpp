#include <QSignalSpy>
#include <QTest>

#include "app/desk/views/flat_view.hpp"
#include "small_estimate.hpp"

namespace wrapgauge {
namespace {

using Kind = LayoutGrip::Kind;
const LayoutPart kRight{LayoutPart::Kind::kChamber, 1, 0};

Layout closed_by_stretch() {
  Layout layout = two_chamber_plan().layout;
  layout.closure = Closure{-0.035, {}, 0.05, 0.0};
  return layout;
}

struct WithGrips : WithShown {
  FlatView view{shown, selection};
  Layout changed;
  std::optional<LayoutGrip> grip;

  explicit WithGrips(const Layout& layout) {
    view.resize(700, 600);
    view.show();
    shown.show_layout(std::make_shared<const Layout>(layout));
    wait_until_at_rest(view);
    QObject::connect(&view, &FlatView::gripMoved, &view, [this](const LayoutGrip& which, const Layout& to) {
      grip = which;
      changed = to;
    });
  }
  QPoint pixel_of(const Vec2& point_m) {
    return view.mapFromScene(QPointF(1e3 * point_m.x(), -1e3 * point_m.y()));
  }
  void drag(const QPoint& from, const QPoint& to, bool escape = false) {
    QTest::mousePress(view.viewport(), Qt::LeftButton, {}, from);
    for (int k = 1; k <= 8; ++k) QTest::mouseMove(view.viewport(), from + (to - from) * k / 8);
    if (escape) QTest::keyClick(&view, Qt::Key_Escape);
    QTest::mouseMove(view.viewport(), to);
    QTest::mouseRelease(view.viewport(), Qt::LeftButton, {}, to);
  }
};

TEST(FlatGrips, APointOfTheChosenPartIsDraggedAndSnapsToWhatIsInLine) {
  const Layout layout = closed_by_stretch();
  WithGrips with(layout);
  const Vec2 corner = layout.chambers[1].boundary_m[2];
  with.drag(with.pixel_of(corner), with.pixel_of(corner + Vec2(0.0, 0.005)));
  EXPECT_FALSE(with.grip) << "the points of a part that is not chosen are not there";
  with.view.choose_part(kRight);
  with.drag(with.pixel_of(corner), with.pixel_of(corner + Vec2(0.0, 0.0096)));
  ASSERT_TRUE(with.grip);
  EXPECT_EQ(*with.grip, (LayoutGrip{Kind::kPoint, kRight, 2}));
  EXPECT_EQ(with.view.chosen_part(), kRight);
  const Vec2 moved = with.changed.chambers[1].boundary_m[2];
  EXPECT_NEAR(moved.y(), layout.outline_m[2].y(), 1e-9) << "the outline's edge is near";
  EXPECT_NEAR(moved.x(), corner.x(), 1e-9);
  EXPECT_EQ(with.changed.outline_m, layout.outline_m);
}

TEST(FlatGrips, EscapeEndsADragWhereItBegan) {
  const Layout layout = closed_by_stretch();
  WithGrips with(layout);
  QSignalSpy part(&with.view, &FlatView::chamberMoved);
  const Vec2 inside(0.02, 0.012);
  with.drag(with.pixel_of(inside), with.pixel_of(inside + Vec2(0.0, 0.005)), true);
  EXPECT_EQ(part.size(), 0);
  EXPECT_EQ(with.view.chosen_part(), kRight);
  const Vec2 corner = layout.chambers[1].boundary_m[2];
  with.drag(with.pixel_of(corner), with.pixel_of(corner + Vec2(0.0, 0.005)), true);
  EXPECT_FALSE(with.grip);
  with.drag(with.pixel_of(corner), with.pixel_of(corner + Vec2(0.0, 0.005)));
  EXPECT_TRUE(with.grip) << "it can be dragged again";
}

TEST(FlatGrips, ClosingLinesAreDraggedSidewaysOnlyAndSteppedByKey) {
  Layout layout = closed_by_stretch();
  layout.closure = Closure{-0.033, 60.0 * mm, {}, 0.0};
  WithGrips with(layout);
  const Vec2 on_second(0.027, 0.025);
  with.drag(with.pixel_of(on_second), with.pixel_of(on_second + Vec2(0.0031, 0.004)));
  ASSERT_TRUE(with.grip);
  EXPECT_EQ(with.grip->kind, Kind::kSecondLine);
  EXPECT_NEAR(with.changed.closure->closing_length->si(), 0.063, 1e-9) << "in line with the chamber's edge";
  with.view.choose_part(std::nullopt);
  QTest::keyClick(&with.view, Qt::Key_Escape);
  QTest::keyClick(&with.view, Qt::Key_PageDown, Qt::ControlModifier);
  EXPECT_TRUE(with.view.accessibleDescription().contains(QStringLiteral("first closing line")));
  QTest::keyClick(&with.view, Qt::Key_Right);
  EXPECT_EQ(with.grip->kind, Kind::kFirstLine);
  EXPECT_NEAR(with.changed.closure->from_x_m, -0.032, 1e-12);
}

TEST(FlatGrips, HoveringShowsThatTheyCanBeDragged) {
  WithGrips with(closed_by_stretch());
  with.view.choose_part(kRight);
  const Vec2 corner = two_chamber_plan().layout.chambers[1].boundary_m[2];
  const auto at = [&](const Vec2& point_m) {
    const QPoint pixel = with.pixel_of(point_m);
    QTest::mouseMove(with.view.viewport(), pixel + QPoint(40, 40));
    QTest::mouseMove(with.view.viewport(), pixel);
    return with.view.viewport()->cursor().shape();
  };
  EXPECT_EQ(at(corner), Qt::SizeAllCursor);
  EXPECT_EQ(at({-0.035, 0.026}), Qt::SizeHorCursor);
  EXPECT_EQ(at({0.0, 0.025}), Qt::ArrowCursor);
}

}  // namespace
}  // namespace wrapgauge
