#include <QOpenGLWidget>
#include <QSlider>
#include <ctime>

#include "demo_views.hpp"

namespace wrapgauge {
namespace {

#define NEEDS_GRAPHICS()                                     \
  if (const QString why = why_no_graphics(); !why.isEmpty()) \
  GTEST_SKIP() << "NOT TRIED: no usable display for OpenGL (" << why.toStdString() << "); run under xvfb-run."

int distinct_colours(const QImage& image) {
  QSet<QRgb> colours;
  for (int y = 0; y < image.height(); y += 3)
    for (int x = 0; x < image.width(); x += 3) colours.insert(image.pixel(x, y));
  return static_cast<int>(colours.size());
}

TEST(BodyOnScreen, AllViewsAreDrawnAtEachSizeInBothPalettes) {
  NEEDS_GRAPHICS();
  const QPalette light = QApplication::palette();
  QPalette dark(QColor(53, 53, 58), QColor(45, 45, 50));
  for (const bool is_dark : {false, true})
    for (const QSize& size : {QSize(1400, 900), QSize(1024, 700)}) {
      QApplication::setPalette(is_dark ? dark : light);
      DemoViews views(size);
      ASSERT_TRUE(views.show_estimate());
      views.selection.select_chamber(ChamberId(1));
      views.selection.pick_place(demo_estimate()->figures.peak_at_m);
      EXPECT_TRUE(views.probe->text().contains("Limit there"));  // the device covers its own peak
      let_events_run(300);
      const QString name = QString("%1/views-%2x%3-%4-%5.png")
                               .arg(picture_folder())
                               .arg(size.width())
                               .arg(size.height())
                               .arg(is_dark ? "dark" : "light")
                               .arg(qRound(100.0 * views.window.devicePixelRatioF()));
      const QImage image = views.window.grab().toImage();
      ASSERT_TRUE(image.save(name));
      views.body->picture().save(QString(name).replace("/views-", "/body-"));
      EXPECT_GT(distinct_colours(views.body->picture()), 60) << name.toStdString();
    }
  QApplication::setPalette(light);
}

TEST(BodyOnScreen, ScrubbingShowsEveryStateAsItIsAndSaysHowQuicklyItGoes) {
  NEEDS_GRAPHICS();
  DemoViews views({900, 700});
  ASSERT_TRUE(views.show_estimate());
  const int count = views.shown.state_count();
  ASSERT_GT(count, 2);
  int drawn = 0;
  auto* canvas = views.body->findChild<QOpenGLWidget*>();
  ASSERT_TRUE(canvas);
  QObject::connect(canvas, &QOpenGLWidget::frameSwapped, [&] { ++drawn; });
  // Wall time, and processor time of all threads, which tells more where other work goes on.
  const auto sweep = [&](const char* what, int frames) {
    QElapsedTimer timer;
    timer.start();
    const std::clock_t before = std::clock();
    for (int frame = 0; frame < frames; ++frame) {
      views.strip->slider()->setValue(frame % count);
      const int before_frame = drawn;
      while (drawn == before_frame) QCoreApplication::processEvents();
    }
    const double wall_ms = std::max(1.0, static_cast<double>(timer.elapsed())) / frames;
    const double work_ms = 1e3 * static_cast<double>(std::clock() - before) / CLOCKS_PER_SEC / frames;
    std::printf("%s: %.0f frames a second (%.1f ms a frame, %.1f ms of processor time)\n", what,
                1e3 / wall_ms, wall_ms, work_ms);
    return 1e3 / wall_ms;
  };
  sweep("first time", 2 * count);
  let_events_run(300);
  sweep("scrubbing, all views in 900 x 700", 60);
  for (QWidget* hidden : std::initializer_list<QWidget*>{views.probe, views.table, views.strip, views.flat})
    hidden->hide();
  let_events_run(300);
  sweep("scrubbing, the body alone in 900 x 700", 40);
  std::vector<QImage> pictures;
  for (int state = 0; state < count; ++state) {
    views.selection.show_state(state);
    pictures.push_back(views.body->picture());
    for (int before = 0; before < state; ++before)
      EXPECT_NE(pictures[static_cast<std::size_t>(before)], pictures.back()) << before << " and " << state;
  }
  views.selection.show_state(0);
  EXPECT_EQ(views.body->picture(), pictures.front());
}

}  // namespace
}  // namespace wrapgauge
