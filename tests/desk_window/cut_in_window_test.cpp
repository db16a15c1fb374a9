#include <QSlider>
#include <QTabWidget>

#include "app/desk/views/cut_view.hpp"
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
};

TEST_F(CutInWindow, TheDemoIsCutWhereItPressesMostAndAllItsRoundIsSeen) {
  CutView& cut = open_cut();
  EXPECT_GT(cut.section()->pressed.size(), 20u);
  EXPECT_EQ(window_.views().selection().cut_m(), cut.section()->station_m);
  picture(QStringLiteral("cut-of-the-demo"));
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
