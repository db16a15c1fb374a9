#include "app/desk/views/flat_view.hpp"

#include <QSignalSpy>
#include <QTest>

#include "with_flat_view.hpp"

namespace wrapgauge {
namespace {

TEST(FlatView, AClickedChamberIsChosenEverywhere) {
  WithFlatView with;
  with.open();
  QTest::mouseClick(with.view.viewport(), Qt::LeftButton, {}, with.pixel_of(20.0, 10.0));
  ASSERT_TRUE(with.selection.chamber());
  EXPECT_EQ(index_of(*with.selection.chamber()), 1U);
  with.selection.select_chamber(ChamberId(0));
  EXPECT_EQ(with.view.chosen_part(), (LayoutPart{LayoutPart::Kind::kChamber, 0, 0}));
}

TEST(FlatView, ADraggedChamberTellsHowFarItWasMovedAndStaysUntilTheLayoutChanges) {
  WithFlatView with;
  with.open();
  QSignalSpy moved(&with.view, &FlatView::chamberMoved);
  const QPoint from = with.pixel_of(20.0, 12.0), to = with.pixel_of(20.0, 16.1);
  QTest::mousePress(with.view.viewport(), Qt::LeftButton, {}, from);
  for (int k = 1; k <= 8; ++k) QTest::mouseMove(with.view.viewport(), from + (to - from) * k / 8);
  QTest::mouseRelease(with.view.viewport(), Qt::LeftButton, {}, to);
  ASSERT_EQ(moved.size(), 1);
  EXPECT_EQ(index_of(moved[0][0].value<ChamberId>()), 1U);
  const auto by_m = moved[0][1].value<Vec2>();
  EXPECT_NEAR(by_m.x(), 0.0, 1e-9);  // in line with where it was
  EXPECT_NEAR(by_m.y(), 4.0e-3, 0.6e-3);
}

TEST(FlatView, ArrowKeysMoveTheChosenPartByAMillimetre) {
  WithFlatView with;
  with.open();
  QSignalSpy moved(&with.view, &FlatView::partMoved);
  with.view.choose_part(LayoutPart{LayoutPart::Kind::kInlet, 0, 0});
  QTest::keyClick(&with.view, Qt::Key_Left);
  QTest::keyClick(&with.view, Qt::Key_Up, Qt::ShiftModifier);
  ASSERT_EQ(moved.size(), 2);
  EXPECT_NEAR((moved[0][1].value<Vec2>() - Vec2(-1e-3, 0.0)).norm(), 0.0, 1e-12);
  EXPECT_NEAR((moved[1][1].value<Vec2>() - Vec2(0.0, 5e-3)).norm(), 0.0, 1e-12);
}

TEST(FlatView, TellsSizeAndPlaceOfTheChosenPartWithTheirUnits) {
  WithFlatView with;
  with.open();
  with.view.choose_part(LayoutPart{LayoutPart::Kind::kChamber, 1, 0});  // 3 to 30 mm, -20 to 20 mm
  EXPECT_EQ(with.view.accessibleDescription(),
            "chamber right: 27.0 mm wide, 40.0 mm high\nleft edge at x 3.0 mm, lower edge at y -20.0 mm");
}

TEST(FlatView, PageDownGoesThroughEveryPartAndBackToTheFirst) {
  WithFlatView with;
  with.open();
  std::vector<LayoutPart> seen;
  for (int k = 0; k < 6; ++k) {  // outline, channel, two chambers, inset spot, inlet
    QTest::keyClick(&with.view, Qt::Key_PageDown);
    ASSERT_TRUE(with.view.chosen_part());
    for (const LayoutPart& before : seen) EXPECT_FALSE(before == *with.view.chosen_part());
    seen.push_back(*with.view.chosen_part());
  }
  QTest::keyClick(&with.view, Qt::Key_PageDown);
  EXPECT_EQ(*with.view.chosen_part(), seen.front());
}

}  // namespace
}  // namespace wrapgauge
