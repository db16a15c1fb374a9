// Every step is always in sight, the verdict stands at its place, and what is typed into stays where it is.

#include <QLabel>
#include <QScrollBar>
#include <QSpinBox>

#include "app/desk/window/verdict_bar.hpp"
#include "tests/desk_session/small_plan.hpp"
#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class Rail : public JobTest {
 protected:
  void open_small(Pressure inside = 2.0 * kPa) {
    Plan plan = small_plan();
    plan.inflation = {{"tube", inside, {}}};
    ASSERT_TRUE(write_plan(plan, root() / "pad.json").ok());
    hand::drop(window_, root() / "pad.json");
    ASSERT_TRUE(wait_for_result()) << window_.message().words().toStdString();
  }
  int top_in_window(const QWidget& widget) { return widget.mapTo(&window_, QPoint()).y(); }
  HeldScroll& column() { return *window_.column().findChild<HeldScroll*>(); }
};

TEST_F(Rail, HoldsAllStepsWhicheverIsOpenAndHoweverLowTheWindow) {
  open_small();
  for (const QSize size : {QSize(1400, 900), QSize(1024, 700), QSize(1024, 560)}) {
    window_.resize(size);
    for (const PlanStep step : kPlanSteps) {
      window_.column().open_step(step);
      ASSERT_TRUE(wait_until_at_rest(window_));
      const auto marks = window_.column().findChildren<StepMark*>();
      ASSERT_EQ(marks.size(), 7);
      for (const StepMark* mark : marks) {
        EXPECT_EQ(mark->visibleRegion(), QRegion(mark->rect())) << mark->text().toStdString();
        EXPECT_GE(mark->height(), mark->minimumSizeHint().height()) << mark->text().toStdString();
      }
    }
  }
}

TEST_F(Rail, TheFieldThatIsTypedIntoStaysWhereItIs) {
  open_small();
  window_.resize(1024, 700);
  open(PlanStep::kInflation);
  ASSERT_TRUE(wait_until_at_rest(window_));
  QWidget* form = column().widget();
  auto* field = named<QDoubleSpinBox>(QStringLiteral("pressure of tube"));
  ASSERT_NE(field, nullptr);
  field->setFocus();
  ASSERT_TRUE(field->hasFocus());
  const int before = top_in_window(*field);
  QLabel* above = nullptr;
  for (QLabel* label : form->findChildren<QLabel*>())
    if (label->isVisible() && top_in_window(*label) < before &&
        (!above || top_in_window(*label) < top_in_window(*above)))
      above = label;
  ASSERT_NE(above, nullptr) << "nothing stands above the field";
  const int low = above->height();
  above->setMinimumHeight(low + 120);
  ASSERT_TRUE(wait_until([&] { return above->height() >= low + 120; }));
  ASSERT_TRUE(wait_until_at_rest(window_));
  EXPECT_EQ(top_in_window(*field), before) << "it was pushed down";
  above->setMinimumHeight(0);
  above->hide();
  ASSERT_TRUE(wait_until_at_rest(window_));
  EXPECT_EQ(top_in_window(*field), before) << "it moved up";
  open(PlanStep::kWear);
  EXPECT_EQ(form->layout()->contentsMargins().top(), 0) << "another form begins at its top";
}

TEST_F(Rail, TheVerdictStaysAtItsPlaceAndItsButtonActs) {
  open_small(12.0 * kPa);
  VerdictBar& verdict = window_.verdict();
  const QRect place = verdict.geometry();
  EXPECT_TRUE(is_said(verdict.line().words));
  picture(QStringLiteral("verdict-above"));
  hand::press(window_, QStringLiteral("Find the highest"));
  EXPECT_TRUE(wait_until([&] { return verdict.line().act == VerdictLine::Act::kCancel; }));
  ASSERT_TRUE(wait_until([&] { return window_.session().ceiling() != nullptr; }));
  EXPECT_TRUE(is_said(QStringLiteral("of the plan")));
  picture(QStringLiteral("verdict-highest"));
  hand::press(window_, QStringLiteral("Set it"));
  EXPECT_LT(std::get<Pressure>(window_.session().plan().inflation[0].target), 12.0 * kPa);
  EXPECT_TRUE(is_said(QStringLiteral("the plan is set to it")));
  EXPECT_TRUE(is_said(QStringLiteral("Out of date: the inflation changed.")));
  ASSERT_TRUE(wait_for_views());
  picture(QStringLiteral("verdict-set"));
  hand::key(window_, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(std::get<Pressure>(window_.session().plan().inflation[0].target), 12.0 * kPa);
  EXPECT_EQ(verdict.geometry(), place);
}

TEST_F(Rail, WhatIsMissingIsSaidWithAButtonThatLeadsThere) {
  hand::choose_in_menu(window_, {QStringLiteral("Plan"), QStringLiteral("New")});
  open(PlanStep::kNote);
  EXPECT_TRUE(is_said(QStringLiteral("Nothing to judge yet: Body needs a body.")));
  picture(QStringLiteral("verdict-missing"));
  hand::press(window_, QStringLiteral("Open Body"));
  EXPECT_EQ(window_.column().opened(), PlanStep::kBody);
}

}  // namespace
}  // namespace wrapgauge
