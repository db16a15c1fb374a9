#include <QSlider>
#include <QTabWidget>

#include "app/desk/views/cut_view.hpp"
#include "model/body/axis_angle.hpp"
#include "model/wrap/station_angle.hpp"
#include "tests/desk_window/hand.hpp"
#include "tests/desk_window/window_fixture.hpp"

namespace wrapgauge {
namespace {

class CutInWindow : public WindowTest {
 protected:
  CutView& open_cut() {
    window_.start({});
    EXPECT_TRUE(wait_for_views());
    auto* cut = window_.findChild<CutView*>();
    for (auto* tabs : window_.findChildren<QTabWidget*>())
      if (tabs->indexOf(cut) >= 0) tabs->setCurrentWidget(cut);
    EXPECT_TRUE(wait_until([cut] { return cut->section().has_value(); }));
    return *cut;
  }
  static double seen_from_deg(const BodyView& body, const Axis& axis) {
    return angle_about_deg(axis.direction, body.turntable().towards_eye());
  }
};

TEST_F(CutInWindow, TheDemoIsCutWhereItPressesMostAndAllItsRoundIsSeen) {
  CutView& cut = open_cut();
  EXPECT_GT(cut.section()->pressed.size(), 20u);
  EXPECT_EQ(window_.views().selection().cut_m(), cut.section()->station_m);
  picture(QStringLiteral("cut-of-the-demo"));
}

TEST_F(CutInWindow, TheRingIsDraggedAlongTheLimb) {
  CutView& cut = open_cut();
  BodyView& body = window_.views().body();
  const ShownPlan& shown = window_.views().shown();
  const Axis& axis = shown.body()->axis;
  // Where the ring faces the eye.
  const auto on_limb = [&](double station_m) {
    const auto at = skin_point_at(BodySurface(*shown.body()), {Length(station_m), seen_from_deg(body, axis)});
    const RasterPoint pixel = body.turntable().view().project(at->point_m);
    return QPoint(qRound(pixel.x), qRound(pixel.y));
  };
  const double before = cut.section()->station_m;
  constexpr double kBy_m = 0.010;
  auto& canvas = *body.findChild<QWidget*>(QStringLiteral("canvas"));
  hand::drag(canvas, on_limb(before), on_limb(before - kBy_m));
  EXPECT_NEAR(cut.section()->station_m, before - kBy_m, 2e-3);
  EXPECT_EQ(window_.views().selection().cut_m(), cut.section()->station_m);
  const double after = cut.section()->station_m;
  hand::drag(canvas, on_limb(before + kBy_m), on_limb(before));
  EXPECT_EQ(cut.section()->station_m, after) << "off the ring a hand turns the limb";
}

TEST_F(CutInWindow, AFindingThatIsChosenIsCutThroughWhileTheCutIsOpen) {
  CutView& cut = open_cut();
  const Estimate& of = *window_.views().shown().estimate();
  for (const Finding& finding : of.findings) {
    if (!finding.at_m) continue;
    window_.views().show_place(*finding.at_m);
    const double station_m = (*finding.at_m - of.body.axis.origin_m).dot(of.body.axis.direction);
    EXPECT_TRUE(cut.isVisible()) << "another leaf was turned up";
    EXPECT_NEAR(cut.section()->station_m, station_m, 1e-3);
    return;
  }
  FAIL() << "no finding of the demo has a place";
}

}  // namespace
}  // namespace wrapgauge
