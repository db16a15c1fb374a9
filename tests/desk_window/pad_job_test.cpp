#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class PadJob : public JobTest {
 protected:
  void make_torso() {
    hand::choose(window_, QStringLiteral("Where the body comes from"), QStringLiteral("Made from measures"));
    hand::choose(window_, QStringLiteral("Form of the body"), QStringLiteral("Torso"));
    ASSERT_TRUE(wait_for_checks());
    EXPECT_EQ(window_.session().plan().tissue_site, "abdomen");
  }

  void make_pad() {
    const auto answer = [](QDialog& dialog) {
      hand::choose(dialog, QStringLiteral("Kind of layout"), QStringLiteral("Round pad"));
      hand::type(dialog, QStringLiteral("Diameter"), QStringLiteral("100"));
      hand::press(dialog, QStringLiteral("Make"));
    };
    hand::with_answers([this] { hand::press(window_, QStringLiteral("Make a layout from sizes")); },
                       {answer});
    ASSERT_EQ(window_.session().plan().layout.chambers.size(), 2U);
  }

  Length station() { return std::get<AnchorAtStation>(window_.session().plan().placement.anchor).station; }

  // Along and round the body by mouse, then turned; each is one step to take back.
  void drag_it_into_place() {
    const Length before = station();
    hand::press(window_, QStringLiteral("Place the layout: click to anchor it, drag to move it along and "
                                        "round the body, drag with Ctrl to turn it"));
    const QPoint middle = canvas().rect().center();
    hand::drag(canvas(), middle, middle + QPoint(20, -40));
    ASSERT_TRUE(wait_for_checks());
    const Length dragged_to = station();
    EXPECT_GT(dragged_to, before);
    hand::drag(canvas(), middle + QPoint(60, 0), middle + QPoint(60, -20), Qt::ControlModifier);
    EXPECT_NE(window_.session().plan().placement.turn_deg, 0.0);
    hand::key(window_, Qt::Key_Escape);
    hand::key(window_, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(window_.session().plan().placement.turn_deg, 0.0);
    EXPECT_EQ(station(), dragged_to);
    hand::key(window_, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(station(), before);
    hand::key(window_, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(station(), dragged_to);
  }

  // The same amount in both inlets, by volume: a syringe is the usual control of soft grades.
  void fill_by_volume() {
    for (const Inlet& inlet : window_.session().plan().layout.inlets) {
      const QString name = QString::fromStdString(inlet.name);
      hand::choose(window_, QStringLiteral("Inlet %1 is filled by").arg(name),
                   QStringLiteral("to a volume between the sheets"));
      hand::type(window_, QStringLiteral("Volume of inlet ") + name, QStringLiteral("3"));
    }
  }
};

TEST_F(PadJob, APadOnATorsoGoesFromMeasuresToANote) {
  window_.start({});
  hand::key(window_, Qt::Key_N, Qt::ControlModifier);
  make_torso();
  open(PlanStep::kLayout);
  make_pad();
  ASSERT_TRUE(wait_for_checks());
  open(PlanStep::kWear);
  place_by_click();
  ASSERT_TRUE(wait_for_checks());
  EXPECT_EQ(state(PlanStep::kWear), "ready");
  drag_it_into_place();
  picture(QStringLiteral("pad-1-placed"));
  open(PlanStep::kInflation);
  fill_by_volume();
  ASSERT_TRUE(wait_for_result()) << window_.message().words().toStdString();
  picture(QStringLiteral("pad-2-filled"));
  estimate_on(QStringLiteral("9"));
  save_note("pad");
}

}  // namespace
}  // namespace wrapgauge
