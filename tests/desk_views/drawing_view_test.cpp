#include "app/desk/views/drawing_view.hpp"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

#include "model/io/readers/drawing_reader.hpp"
#include "tests/desk_views/at_rest.hpp"

namespace wrapgauge {
namespace {

// Outline, two chambers, a channel between them, an inlet, a large spot and a piece apart.
struct WithDrawing {
  DrawingView view;
  std::shared_ptr<const Drawing> drawing;

  WithDrawing() {
    const auto read =
        read_drawing(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "tests/data/drawing/guess.svg", {});
    EXPECT_TRUE(read);
    drawing = std::make_shared<const Drawing>(*read);
    view.resize(700, 500);
    view.show();
    view.show_drawing(drawing);
    show();
    wait_until_at_rest(view);
  }
  void show(std::optional<std::size_t> chosen = {}, std::vector<Vec2> added = {}) {
    DrawingMarks marks;
    marks.parts = drawn_parts(*drawing, {});
    marks.chosen = chosen;
    marks.added_inlets_m = std::move(added);
    view.show_marks(std::move(marks));
  }
  QPoint pixel_of(double x_mm, double y_mm) { return view.on_view({1e-3 * x_mm, 1e-3 * y_mm}).toPoint(); }
  std::optional<std::size_t> at(double x_mm, double y_mm) { return view.shape_at(pixel_of(x_mm, y_mm)); }
};

TEST(DrawingView, AClickMeansTheSmallestShapeThereAndALineOrDotBeforeIt) {
  WithDrawing with;
  EXPECT_EQ(with.at(2.0, 3.0), 0U);    // the outline
  EXPECT_EQ(with.at(12.0, 14.0), 1U);  // a chamber in it
  EXPECT_EQ(with.at(50.0, 30.0), 3U);  // the channel
  EXPECT_EQ(with.at(25.0, 30.5), 4U);  // the inlet's dot
  EXPECT_EQ(with.at(75.0, 21.0), 5U);  // the spot in the other chamber
  EXPECT_FALSE(with.at(130.0, 40.0));
  QSignalSpy chosen(&with.view, &DrawingView::shapeChosen);
  QTest::mouseClick(&with.view, Qt::LeftButton, {}, with.pixel_of(12.0, 14.0));
  ASSERT_EQ(chosen.count(), 1);
  EXPECT_EQ(chosen[0][0].value<std::size_t>(), 1U);
}

TEST(DrawingView, KeysGoThroughShapesAndInletsThatWereAdded) {
  WithDrawing with;
  with.show(6, {Vec2(0.08, 0.04)});
  QSignalSpy chosen(&with.view, &DrawingView::shapeChosen);
  QTest::keyClick(&with.view, Qt::Key_PageDown);
  with.show(7, {Vec2(0.08, 0.04)});
  QTest::keyClick(&with.view, Qt::Key_PageDown);
  QTest::keyClick(&with.view, Qt::Key_PageUp);
  ASSERT_EQ(chosen.count(), 3);
  EXPECT_EQ(chosen[0][0].value<std::size_t>(), 7U);
  EXPECT_EQ(chosen[1][0].value<std::size_t>(), 0U);
  EXPECT_EQ(chosen[2][0].value<std::size_t>(), 6U);
}

TEST(DrawingView, APlaceIsGivenByAClickOrByKeyAndGivenUpByEscape) {
  WithDrawing with;
  with.show(1);
  QSignalSpy given(&with.view, &DrawingView::placeGiven), up(&with.view, &DrawingView::placeGivenUp);
  with.view.ask_for_place(true);
  QTest::mouseClick(&with.view, Qt::LeftButton, {}, with.pixel_of(70.0, 40.0));
  ASSERT_EQ(given.count(), 1);
  EXPECT_LT((given[0][0].value<Vec2>() - Vec2(0.070, 0.040)).norm(), 0.5e-3);
  QTest::keyClick(&with.view, Qt::Key_Return);
  ASSERT_EQ(given.count(), 2);
  EXPECT_LT((given[1][0].value<Vec2>() - Vec2(0.025, 0.030)).norm(), 1e-3);
  QTest::keyClick(&with.view, Qt::Key_Escape);
  EXPECT_EQ(up.count(), 1);
}

TEST(DrawingView, PartsDifferByTheirHatchWhereTheirColoursAreNotSeen) {
  const DrawnPart hatched[] = {DrawnPart::kChamber, DrawnPart::kInsetSeam, DrawnPart::kChannel,
                               DrawnPart::kStrap, DrawnPart::kOutline};
  std::vector<std::pair<std::optional<double>, bool>> seen;
  for (const DrawnPart part : hatched) {
    const PartLook look = part_look(part);
    const auto its = std::pair(look.hatch_deg, look.crossed);
    EXPECT_EQ(std::count(seen.begin(), seen.end(), its), 0) << part_name(part);
    seen.push_back(its);
  }
}

TEST(DrawingView, ZoomingKeepsWhatLiesUnderThePointerAndHomeShowsAll) {
  WithDrawing with;
  const QPointF pointer = with.pixel_of(75.0, 20.0);
  const Vec2 before = with.view.on_page(pointer);
  const QPointF corner = with.view.on_view({0.0, 0.0});
  QWheelEvent turn(pointer, with.view.mapToGlobal(pointer), {}, {0, 240}, Qt::NoButton, {}, Qt::NoScrollPhase,
                   false);
  QApplication::sendEvent(&with.view, &turn);
  EXPECT_LT((with.view.on_page(pointer) - before).norm(), 1e-6);
  EXPECT_GT(QLineF(with.view.on_view({0.0, 0.0}), corner).length(), 20.0);
  QTest::keyClick(&with.view, Qt::Key_Home);
  EXPECT_LT(QLineF(with.view.on_view({0.0, 0.0}), corner).length(), 1.0);
}

}  // namespace
}  // namespace wrapgauge
