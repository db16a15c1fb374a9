// Without a screen the body is drawn by the software picture; all else is the same.

#include "app/desk/views/body_view.hpp"

#include <QPainter>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>
#include <set>

#include "app/desk/views/body_overlay.hpp"
#include "app/desk/views/probe_panel.hpp"
#include "small_estimate.hpp"

namespace wrapgauge {
namespace {

struct WithBodyView : WithShown {
  BodyView view{shown, selection};
  QWidget* canvas() { return view.findChild<QWidget*>("canvas"); }

  void open() {
    view.resize(500, 400);
    view.show();
    ASSERT_TRUE(show_all_states(two_chamber_estimate()));
  }
  QPoint pixel_of(const Vec3& point) const {
    const RasterPoint at = view.turntable().view().project(point);
    return {static_cast<int>(std::lround(at.x)), static_cast<int>(std::lround(at.y))};
  }
};

TEST(BodyView, SaysWhyItIsDrawnBySoftwareAndDrawsItAllTheSame) {
  WithBodyView with;
  with.open();
  EXPECT_FALSE(with.view.why_software().isEmpty());
  const QImage image = with.view.picture();
  const QPoint anchor = with.pixel_of(with.shown.estimate()->wrap.anchor_m);
  const QColor middle = image.pixelColor(anchor + QPoint(30, 12)), corner = image.pixelColor(3, 200);
  EXPECT_NE(middle, corner);
}

TEST(BodyView, AClickPicksThePlaceUnderItAndTheChamberThatLiesThere) {
  WithBodyView with;
  with.open();
  const Estimate& estimate = *with.shown.estimate();
  const Vec3 peak = estimate.figures.chambers[1].peak_at_m;
  QTest::mouseClick(with.canvas(), Qt::LeftButton, {}, with.pixel_of(peak));
  ASSERT_TRUE(with.selection.place_m());
  EXPECT_LT((*with.selection.place_m() - peak).norm(), 4e-3);  // the skin is lowered, and a pixel has a size
  ASSERT_TRUE(with.selection.chamber());
  EXPECT_EQ(index_of(*with.selection.chamber()), 1U);
  const auto reading = read_place(with.shown, with.selection.state(), *with.selection.place_m());
  ASSERT_TRUE(reading && reading->mean_1cm2);
  EXPECT_NEAR(*reading->mean_1cm2 / estimate.figures.chambers[1].peak, 1.0, 0.15);
  EXPECT_GT(reading->tissue_depth->si(), 0.0);
}

TEST(BodyView, WhilePlacingAClickTellsWhereTheAnchorShallBe) {
  WithBodyView with;
  with.open();
  QSignalSpy moved(&with.view, &BodyView::anchorMoved);
  with.view.set_placing(true);
  const Vec3 anchor = with.shown.estimate()->wrap.anchor_m;
  QTest::mouseClick(with.canvas(), Qt::LeftButton, {}, with.pixel_of(anchor));
  ASSERT_EQ(moved.size(), 1);
  const auto station = moved[0][0].value<AnchorAtStation>();
  EXPECT_NEAR(station.station / mm, 100.0, 1.0);  // where the plan has put it, to a pixel
  EXPECT_NEAR(std::remainder(station.angle_deg, 360.0), 0.0, 2.0);
  EXPECT_TRUE(moved[0][2].toBool());
  EXPECT_FALSE(with.selection.place_m());  // placing picks nothing
}

TEST(BodyView, ArrowKeysTurnTheBodyAndHomeShowsAllOfIt) {
  WithBodyView with;
  with.open();
  const Vec3 before = with.view.turntable().towards_eye();
  QTest::keyClick(&with.view, Qt::Key_Right);
  const double turned = std::acos(before.dot(with.view.turntable().towards_eye()));
  EXPECT_NEAR(turned * 180.0 / 3.14159265, 15.0, 1e-6);
  const double scale = with.view.turntable().view().pixels_per_m;
  QTest::keyClick(&with.view, Qt::Key_Plus);
  EXPECT_GT(with.view.turntable().view().pixels_per_m, 1.1 * scale);
  with.view.look_from(ViewSide::kFront);
  QTest::keyClick(&with.view, Qt::Key_Home);
  EXPECT_LT(with.view.turntable().view().pixels_per_m, 1.1 * scale);
}

TEST(BodyView, ItsButtonsStandInOneRowWhileTheyFitAtAll) {
  WithBodyView with;
  with.open();
  auto buttons = with.view.findChildren<QToolButton*>();
  buttons.removeIf([](const QToolButton* button) { return button->objectName() == "look"; });
  int words = 0;
  for (const QToolButton* button : buttons) words += button->sizeHint().width();
  const auto rows_at = [&](int width) {
    with.view.resize(width, 400);
    wait_until_at_rest(with.view);
    std::set<int> rows;
    for (const QToolButton* button : buttons) {
      rows.insert(button->y());
      EXPECT_LE(button->geometry().right(), width - 8) << "cut off at " << width;
      for (const QToolButton* other : buttons)
        EXPECT_TRUE(button == other || !button->geometry().intersects(other->geometry()));
    }
    return rows.size();
  };
  const int between = static_cast<int>(buttons.size()) - 1;
  EXPECT_EQ(rows_at(words + 16 + 6 * between), 1U);
  EXPECT_EQ(rows_at(words + 16 + 2 * between), 1U);
  EXPECT_EQ(rows_at(words + 16), 2U);
  EXPECT_EQ(rows_at(500), 1U);
}

TEST(BodyView, TurnsToAChamberThatIsChosenElsewhereWhileItIsHidden) {
  WithBodyView with;
  with.open();
  const ScenePart part = contact_part(with.shown, with.selection.state());
  for (const int chamber : {0, 1}) {
    const Vec3 outward = part.labels[static_cast<std::size_t>(chamber)].normal;
    with.view.look_from(ViewSide::kFront);
    if (with.view.turntable().towards_eye().dot(outward) > 0.0) with.view.look_from(ViewSide::kBack);
    ASSERT_LT(with.view.turntable().towards_eye().dot(outward), 0.0) << "it is not hidden";
    with.selection.select_chamber(ChamberId(chamber));
    EXPECT_GT(with.view.turntable().towards_eye().dot(outward), 0.7) << chamber;
  }
  const Vec3 eye = with.view.turntable().towards_eye();
  with.selection.select_chamber(ChamberId(0));
  EXPECT_EQ(with.view.turntable().towards_eye(), eye) << "what is in sight turns nothing";
}

TEST(BodyView, TurnsToAPlaceAndStillCallsTheSameSideTheFront) {
  WithBodyView with;
  with.open();
  with.view.look_from(ViewSide::kFront);
  const Vec3 front = with.view.turntable().towards_eye();
  const SkinSurface& skin = *with.shown.skin();
  const Vec3 behind =
      with.shown.body()->axis.origin_m - 1.0 * front + 0.1 * with.shown.body()->axis.direction;
  const SkinPoint place = skin.at(behind);
  with.view.show_place(place.point_m);
  EXPECT_GT(with.view.turntable().towards_eye().dot(place.normal), 0.95);
  with.view.look_from(ViewSide::kFront);
  EXPECT_LT((with.view.turntable().towards_eye() - front).norm(), 1e-12);
}

// A chamber's name would stand on its middle: there, in this scene, it is pressed most, and nothing is
// hatched.
TEST(BodyView, PutsNoNameOnTheSpotThatIsPressedMost) {
  WithBodyView with;
  with.open();
  ScenePart part = contact_part(with.shown, with.selection.state(), BodyLook::kDevice);
  ASSERT_TRUE(part.hottest);
  const SceneLabel& right = part.labels[1];
  part.hottest = {right.point_m, right.normal};
  part.hatched = {};
  with.view.show_place(right.point_m);
  const LimbView& view = with.view.turntable().view();
  auto* overlay = with.view.findChild<BodyOverlay*>();
  ASSERT_NE(overlay, nullptr);
  overlay->show_over(std::make_shared<const BodyScene>(
                         BodyScene{with.shown.skin(), {std::make_shared<const ScenePart>(part)}}),
                     view, {});
  QImage paper(with.view.size(), QImage::Format_RGB32);
  QPainter painter(&paper);
  const RasterPoint at = view.project(right.point_m);
  const auto names = overlay->draw(painter).names;
  EXPECT_FALSE(names.empty());
  for (const QRectF& name : names) EXPECT_FALSE(name.contains(QPointF(at.x, at.y)));
}

TEST(ProbePanel, SaysPressureLimitAndTissueDepthOfThePickedPlace) {
  WithBodyView with;
  with.open();
  ProbePanel panel(with.shown, with.selection);
  EXPECT_TRUE(panel.text().isEmpty());
  with.selection.pick_place(with.shown.estimate()->figures.chambers[0].peak_at_m);
  const QString text = panel.text();
  for (const char* row : {"Contact pressure", "Limit there", "Tissue depth", "Share of limit"})
    EXPECT_TRUE(text.contains(row)) << row << " in\n" << text.toStdString();
  EXPECT_TRUE(text.contains("Under\tleft"));
}

}  // namespace
}  // namespace wrapgauge
