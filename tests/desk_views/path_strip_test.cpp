#include "app/desk/views/path_strip.hpp"

#include <QChart>
#include <QChartView>
#include <QGraphicsTextItem>
#include <QLabel>
#include <QScatterSeries>
#include <QSlider>
#include <QValueAxis>

#include "small_estimate.hpp"

namespace wrapgauge {
namespace {

struct WithStrip : WithShown {
  PathStrip strip{shown, selection};
  QChart* chart = strip.findChild<QChartView*>()->chart();

  bool open(int width, int height) {
    if (!show_all_states(two_chamber_estimate())) return false;
    strip.resize(width, height);
    strip.show();
    return wait_until_at_rest(strip);
  }
};

TEST(PathStrip, NamesAxesAndLinesAtAnySize) {
  for (const QSize& size : {QSize(200, 190), QSize(600, 320)}) {
    WithStrip with;
    ASSERT_TRUE(with.open(size.width(), size.height()));
    for (const QAbstractAxis* axis : with.chart->axes()) {
      EXPECT_TRUE(axis->isTitleVisible());
      EXPECT_TRUE(axis->titleText().endsWith("kPa"));
    }
    QStringList lines;
    for (const QGraphicsItem* item : with.chart->childItems())
      if (const auto* text = dynamic_cast<const QGraphicsSimpleTextItem*>(item); text && text->isVisible()) {
        lines += text->text();
        EXPECT_TRUE(with.chart->plotArea().contains(text->mapRectToParent(text->boundingRect())))
            << text->text().toStdString();
      }
    EXPECT_TRUE(lines.contains(QStringLiteral("limit ÷ 1.5")));
    for (const QGraphicsItem* item : with.chart->scene()->items())
      if (const auto* text = dynamic_cast<const QGraphicsTextItem*>(item); text && text->isVisible()) {
        EXPECT_FALSE(text->toPlainText().contains("...")) << "cut at " << size.width();
      }
  }
}

TEST(PathStrip, NoDotIsCutByTheEdgeOfThePlot) {
  for (const QSize& size : {QSize(200, 190), QSize(600, 320)}) {
    WithStrip with;
    ASSERT_TRUE(with.open(size.width(), size.height()));
    const QRectF plot = with.chart->plotArea();
    int dots = 0;
    for (QAbstractSeries* series : with.chart->series())
      if (auto* scatter = qobject_cast<QScatterSeries*>(series))
        for (const QPointF& point : scatter->points()) {
          const double reach = 0.5 * scatter->markerSize();
          const QPointF at = with.chart->mapToPosition(point, scatter);
          EXPECT_TRUE(plot.adjusted(reach, reach, -reach, -reach).contains(at))
              << point.x() << " " << point.y();
          ++dots;
        }
    EXPECT_EQ(dots, with.shown.state_count() + 1);
  }
}

TEST(PathStrip, LeavesTheCurveRoomAndSaysItsStateInBriefWhereItIsNarrow) {
  for (const int width : {200, 600}) {
    WithStrip with;
    ASSERT_TRUE(with.open(width, with.strip.minimumSizeHint().height()));
    EXPECT_GT(with.chart->plotArea().height(), 5.5 * with.strip.fontMetrics().height()) << "at " << width;
    const auto* words = with.strip.findChild<QLabel*>();
    const QString over = QStringLiteral("peak over 1 cm² on the skin");
    EXPECT_EQ(words->text().contains(over), width == 600);
    EXPECT_TRUE(words->text().contains(over) || words->toolTip().contains(over));
    EXPECT_TRUE(with.strip.slider()->accessibleDescription().contains(over));
  }
}

}  // namespace
}  // namespace wrapgauge
