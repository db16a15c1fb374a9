// Words that belong together stand on one line, and what is being worked out is said when it takes a while.

#include <QCheckBox>
#include <QFormLayout>
#include <QLabel>
#include <QProgressBar>

#include "app/desk/window/run_bar.hpp"
#include "tests/desk_window/window_fixture.hpp"

namespace wrapgauge {
namespace {

// How many ticked labels of the open step stand before their fields; each on the line of its own.
int ticked_rows(const QWidget& window) {
  int rows = 0;
  for (const QFormLayout* form : window.findChildren<QFormLayout*>())
    for (int row = 0; row < form->rowCount(); ++row) {
      const auto* label = form->itemAt(row, QFormLayout::LabelRole);
      const auto* field = form->itemAt(row, QFormLayout::FieldRole);
      if (!label || !field || !label->widget() || !field->widget()) continue;
      const auto* box = qobject_cast<const QCheckBox*>(label->widget());
      if (!box || !box->isVisible() || field->geometry().top() > box->geometry().bottom()) continue;
      EXPECT_LE(std::abs(box->geometry().center().y() - field->geometry().center().y()), 1)
          << box->text().toStdString();
      ++rows;
    }
  return rows;
}

TEST_F(WindowTest, TickedLabelsStandOnTheLineOfTheirFields) {
  window_.start({});
  for (const auto& [step, least] :
       {std::pair(PlanStep::kBody, 2), {PlanStep::kInflation, 8}, {PlanStep::kNote, 2}}) {
    window_.column().open_step(step);
    settle(50);
    EXPECT_GE(ticked_rows(window_), least) << step_name(step).toStdString();
  }
}

TEST_F(WindowTest, TheRunBarComesOnlyWithWhatTakesAWhileAndGoesWithIt) {
  PlanSession session(root() / "other");
  RunBar bar(session);
  const auto shows = [&bar](const QString& words) {
    return bar.isVisible() && bar.findChild<QLabel*>()->text() == words;
  };
  emit session.runner().busyChanged(true);
  EXPECT_FALSE(bar.isVisible()) << "a bar for what may be done at once";
  emit session.runner().busyChanged(false);
  settle(400);
  EXPECT_FALSE(bar.isVisible()) << "a bar for what is done already";
  emit session.runner().busyChanged(true);
  EXPECT_TRUE(wait_until([&] { return shows(QStringLiteral("checking")); }, 3000));
  EXPECT_FALSE(bar.findChild<QProgressBar*>()->isVisible()) << "a check does not know how far it is";
  emit session.runner().progressed(QStringLiteral("inflating"), 0.4);
  EXPECT_TRUE(wait_until([&] { return shows(QStringLiteral("inflating")); }, 3000));
  EXPECT_EQ(bar.findChild<QProgressBar*>()->value(), 40);
  emit session.runner().progressed(QStringLiteral("inflating"), 0.5);
  emit session.runner().busyChanged(false);
  EXPECT_FALSE(bar.isVisible());
  settle(400);
  EXPECT_FALSE(bar.isVisible()) << "it came back for a stage that is over";
}

}  // namespace
}  // namespace wrapgauge
