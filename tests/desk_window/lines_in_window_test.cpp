// Words that belong together stand on one line, and there is room for what is looked at.

#include <QChart>
#include <QChartView>
#include <QCheckBox>
#include <QFormLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTableView>
#include <QToolButton>
#include <set>

#include "app/desk/window/fine_settings.hpp"
#include "app/desk/window/run_bar.hpp"
#include "tests/desk_window/window_fixture.hpp"

namespace wrapgauge {
namespace {

// Rows of the widget's picture with something on them that is much darker or lighter than its corner.
std::pair<int, int> rows_of_ink(QWidget& window, const QWidget& label, int most_rows) {
  const QImage drawn = window.grab(QRect(label.mapTo(&window, QPoint()), label.size())).toImage();
  const int paper = drawn.pixelColor(0, 0).lightness();
  std::pair<int, int> rows{-1, -1};
  for (int y = 0; y < drawn.height() && (rows.first < 0 || y < rows.first + most_rows); ++y)
    for (int x = 0; x < drawn.width(); ++x)
      if (std::abs(drawn.pixelColor(x, y).lightness() - paper) > 100) {
        if (rows.first < 0) rows.first = y;
        rows.second = y;
        break;
      }
  const int above = label.mapTo(&window, QPoint()).y();
  return {rows.first + above, rows.second + above};
}

TEST_F(WindowTest, AMessagesTitleItsFirstLineAndItsButtonStandOnOneLine) {
  MessageBar& bar = window_.message();
  const QString line = QStringLiteral("The body has holes. ");
  for (const int lines : {1, 40}) {
    bar.say_problem(line.repeated(lines));
    const auto labels = bar.findChildren<QLabel*>();
    ASSERT_EQ(labels.size(), 2);
    const int high = labels[0]->fontMetrics().height();
    ASSERT_TRUE(wait_until([&] { return (labels[1]->height() > 2 * high) == (lines > 1); }))
        << labels[1]->height() << " pixels for " << lines << " sentences";
    ASSERT_TRUE(wait_until_at_rest(window_));
    const auto title = rows_of_ink(window_, *labels[0], high), words = rows_of_ink(window_, *labels[1], high);
    EXPECT_LE(std::abs(title.first - words.first), 1) << lines << " sentences";
    const auto* close = bar.findChild<QPushButton*>();
    const int middle = close->mapTo(&window_, close->rect().center()).y();
    EXPECT_LE(std::abs((title.first + title.second) / 2 - middle), 2) << lines << " sentences";
  }
}

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
  ASSERT_TRUE(wait_for_result());
  for (const auto& [step, least] :
       {std::pair(PlanStep::kBody, 2), {PlanStep::kInflation, 8}, {PlanStep::kNote, 2}}) {
    window_.column().open_step(step);
    for (FineSettings* drawer : window_.findChildren<FineSettings*>()) drawer->open();
    ASSERT_TRUE(wait_until_at_rest(window_));
    EXPECT_GE(ticked_rows(window_), least) << step_name(step).toStdString();
  }
}

TEST_F(WindowTest, TheRunBarComesOnlyWithWhatTakesAWhileAndGoesWithIt) {
  constexpr int kBarWouldBeThere_ms = 400;
  PlanSession session(root() / "other");
  RunBar bar(session);
  const auto shows = [&bar](const QString& words) {
    return bar.isVisible() && bar.findChild<QLabel*>()->text() == words;
  };
  emit session.runner().busyChanged(true);
  EXPECT_FALSE(bar.isVisible()) << "a bar for what may be done at once";
  emit session.runner().busyChanged(false);
  let_pass(kBarWouldBeThere_ms);
  EXPECT_FALSE(bar.isVisible()) << "a bar for what is done already";
  emit session.runner().busyChanged(true);
  EXPECT_TRUE(wait_until([&] { return shows(QStringLiteral("checking")); }));
  EXPECT_FALSE(bar.findChild<QProgressBar*>()->isVisible()) << "a check does not know how far it is";
  emit session.runner().progressed(QStringLiteral("inflating"), 0.4);
  EXPECT_TRUE(wait_until([&] { return shows(QStringLiteral("inflating")); }));
  EXPECT_EQ(bar.findChild<QProgressBar*>()->value(), 40);
  emit session.runner().progressed(QStringLiteral("inflating"), 0.5);
  emit session.runner().busyChanged(false);
  EXPECT_FALSE(bar.isVisible());
  let_pass(kBarWouldBeThere_ms);
  EXPECT_FALSE(bar.isVisible()) << "it came back for a stage that is over";
}

TEST_F(WindowTest, ASmallWindowLeavesRoomForTheCurveTheFiguresAndOneRowOfButtons) {
  window_.resize(1024, 700);
  window_.start({});
  ASSERT_TRUE(wait_for_views());
  ASSERT_LE(window_.height(), 700) << "it does not fit";
  const auto* chart = window_.views().strip().findChild<QChartView*>();
  EXPECT_GT(chart->chart()->plotArea().height(), 5.5 * window_.fontMetrics().height());
  EXPECT_TRUE(window_.views().strip().rect().contains(chart->geometry())) << "the curve is cut off";
  std::set<int> rows;
  for (const QToolButton* button : window_.views().body().findChildren<QToolButton*>())
    if (button->objectName() != QStringLiteral("look")) rows.insert(button->y());
  EXPECT_EQ(rows.size(), 1U);
  const auto* table = window_.findChild<ChamberTable*>();
  EXPECT_LE(table->rowViewportPosition(2) + table->rowHeight(2), table->viewport()->height())
      << "fewer than three chambers are seen";
  EXPECT_GE(window_.views().body().height(), 280);
}

}  // namespace
}  // namespace wrapgauge
