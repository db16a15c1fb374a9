#include "app/desk/window/kept_panel.hpp"

#include <QInputDialog>
#include <QListWidget>
#include <QTabWidget>

#include "tests/desk_session/small_plan.hpp"
#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class Kept : public JobTest {
 protected:
  void open_small() {
    ASSERT_TRUE(write_plan(small_plan(), root() / "pad.json").ok());
    hand::drop(window_, root() / "pad.json");
    ASSERT_TRUE(wait_for_views());
    auto* panel = window_.findChild<KeptPanel*>();
    for (auto* tabs : window_.findChildren<QTabWidget*>())
      if (tabs->indexOf(panel) >= 0) tabs->setCurrentWidget(panel);
    ASSERT_TRUE(panel->isVisible());
  }
  void keep_as(const QString& name) {
    hand::with_answers(
        [this] { hand::press(window_, QStringLiteral("Keep the plan as it stands in the tray")); },
        {[name](QDialog& dialog) {
          static_cast<QInputDialog&>(dialog).setTextValue(name);
          dialog.accept();
        }});
  }
  QListWidget& list() { return *named<QListWidget>(QStringLiteral("kept")); }
  void inflate_to(Pressure inside) {
    Plan plan = window_.session().plan();
    plan.inflation[0].target = inside;
    window_.session().edit(QStringLiteral("Inflate"), plan);
    ASSERT_TRUE(wait_for_views());
  }
  Pressure target() { return std::get<Pressure>(window_.session().plan().inflation[0].target); }
};

TEST_F(Kept, AVariantIsKeptTakenUpAgainAndTakenBack) {
  open_small();
  keep_as(QStringLiteral("soft"));
  ASSERT_EQ(list().count(), 1);
  EXPECT_TRUE(list().item(0)->text().startsWith("soft\n")) << list().item(0)->text().toStdString();
  EXPECT_FALSE(list().item(0)->icon().isNull());
  inflate_to(6.0 * kPa);
  list().setCurrentRow(0);
  hand::press(window_, QStringLiteral("Make the chosen variant the plan"));
  EXPECT_EQ(target(), 2.0 * kPa);
  hand::key(window_, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(target(), 6.0 * kPa);
}

TEST_F(Kept, OfTwoItIsSaidWhatDiffers) {
  open_small();
  keep_as(QStringLiteral("soft"));
  inflate_to(6.0 * kPa);
  keep_as(QStringLiteral("firm"));
  ASSERT_EQ(list().count(), 2);
  list().selectAll();
  EXPECT_TRUE(is_said(QStringLiteral("What differs: the inflation; from 'soft' to 'firm'")));
  picture(QStringLiteral("kept-compared"));
  hand::with_answers([this] { hand::press(window_, QStringLiteral("Delete the chosen variants")); },
                     {hand::say(QStringLiteral("Yes"))});
  EXPECT_EQ(list().count(), 0);
}

TEST_F(Kept, AnOutOfDateResultIsNotKept) {
  open_small();
  Plan plan = window_.session().plan();
  plan.inflation[0].target = 3.0 * kPa;
  window_.session().edit(QStringLiteral("Inflate"), plan);
  EXPECT_FALSE(hand::button(window_, QStringLiteral("Keep the plan as it stands in the tray"))->isEnabled());
}

}  // namespace
}  // namespace wrapgauge
