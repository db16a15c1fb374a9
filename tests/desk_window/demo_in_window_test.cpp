#include <QDoubleSpinBox>
#include <QGraphicsTextItem>
#include <QGraphicsView>
#include <QSlider>

#include "app/desk/window/verdict_bar.hpp"
#include "tests/desk_window/window_fixture.hpp"

namespace wrapgauge {
namespace {

TEST_F(WindowTest, TheFirstStartShowsAWorkedDemoInThreeAreas) {
  window_.start({});
  ASSERT_TRUE(wait_for_result());
  EXPECT_EQ(window_.session().plan().layout.chambers.size(), 4U);
  EXPECT_TRUE(window_.views().body().isVisible());
  EXPECT_TRUE(window_.views().flat().isVisible());
  EXPECT_GT(window_.views().shown().state_count(), 2);
  for (const PlanStep step : kPlanSteps) {
    window_.column().open_step(step);
    picture(QStringLiteral("demo-") + step_name(step).toLower());
  }
  window_.resize(1024, 700);
  picture(QStringLiteral("demo-small"));
  for (const QGraphicsItem* item : window_.views().strip().findChild<QGraphicsView*>()->scene()->items())
    if (const auto* text = dynamic_cast<const QGraphicsTextItem*>(item); text && text->isVisible()) {
      const QString words = text->toPlainText();
      EXPECT_FALSE(words.contains(QStringLiteral("...")) || words.contains(QChar(0x2026)))
          << "a number of the curve is cut at this size";
    }
}

TEST_F(WindowTest, TheSliderGoesThroughStoredStatesAndAnEditFollowsInAPreview) {
  window_.start({});
  ASSERT_TRUE(wait_for_result());
  QSlider* slider = window_.views().strip().slider();
  slider->setValue(slider->minimum());
  EXPECT_EQ(window_.views().selection().state(), 0);
  slider->setValue(slider->maximum());
  EXPECT_EQ(window_.views().selection().state(), window_.views().shown().state_count() - 1);

  const auto before = window_.session().solved();
  window_.column().open_step(PlanStep::kInflation);
  auto* pressure = named<QDoubleSpinBox>(QStringLiteral("pressure of lean left"));
  ASSERT_NE(pressure, nullptr);
  pressure->setValue(1.0);
  EXPECT_TRUE(window_.verdict().line().made_of.contains(QStringLiteral("the inflation")));
  ASSERT_TRUE(wait_until([&] { return window_.session().solved() != before; }));
  EXPECT_TRUE(window_.session().stale().empty());
  window_.session().undo_stack().undo();
  EXPECT_NE(pressure->value(), 1.0);
}

}  // namespace
}  // namespace wrapgauge
