#include "app/desk/window/welcome_page.hpp"

#include <QCommandLinkButton>
#include <QListWidget>

#include "tests/desk_session/small_plan.hpp"
#include "tests/desk_window/hand.hpp"
#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class Welcome : public JobTest {
 protected:
  WelcomePage& page() {
    window_.show_start_page();
    auto* page = window_.findChild<WelcomePage*>();
    EXPECT_TRUE(wait_until([page] { return page->isVisible(); }));
    return *page;
  }
  void open_and_leave_a_plan() {
    ASSERT_TRUE(write_plan(small_plan(), root() / "pad.json").ok());
    hand::drop(window_, root() / "pad.json");
    ASSERT_TRUE(wait_for_views());
    hand::key(window_, Qt::Key_N, Qt::ControlModifier);
  }
};

TEST_F(Welcome, GirthsLeadToALimbMadeOfThem) {
  hand::press(page(), QStringLiteral("Girths from a tape"));
  EXPECT_EQ(window_.column().opened(), PlanStep::kBody);
  ASSERT_TRUE(wait_until([this] { return window_.session().now().body() != nullptr; }));
  EXPECT_TRUE(std::holds_alternative<BodyForm>(window_.session().plan().body));
}

TEST_F(Welcome, TheExampleIsTheDemo) {
  hand::press(page(), QStringLiteral("Nothing yet"));
  EXPECT_NE(window_.session().file().string().find("forearm-cuff"), std::string::npos);
}

TEST_F(Welcome, APlanThatWasLeftIsThereWithItsPictureAndOpensAgain) {
  open_and_leave_a_plan();
  EXPECT_TRUE(window_.session().file().empty());
  WelcomePage& shown = page();
  auto* plans = shown.findChild<QListWidget*>();
  ASSERT_TRUE(plans);
  ASSERT_GE(plans->count(), 1);
  EXPECT_EQ(plans->item(0)->text(), "pad");
  const QImage picture = plans->item(0)->icon().pixmap(100, 80).toImage();
  std::set<QRgb> shades;
  for (int x = 0; x < picture.width(); ++x) shades.insert(picture.pixel(x, picture.height() / 2));
  EXPECT_GT(shades.size(), 3u) << "no picture of it";
  take_picture(shown, QStringLiteral("welcome-page"));
  hand::click(*plans->viewport(), plans->visualItemRect(plans->item(0)).center());
  EXPECT_EQ(window_.session().file().filename(), "pad.json");
}

}  // namespace
}  // namespace wrapgauge
