#include <QSlider>

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
      let_events_run(300);
      const QString name = QString("%1/views-%2x%3-%4.png")
                               .arg(picture_folder())
                               .arg(size.width())
                               .arg(size.height())
                               .arg(is_dark ? "dark" : "light");
      const QImage image = views.window.grab().toImage();
      ASSERT_TRUE(image.save(name));
      views.body->picture().save(QString(name).replace("/views-", "/body-"));
      EXPECT_GT(distinct_colours(views.body->picture()), 60) << name.toStdString();
    }
  QApplication::setPalette(light);
}

TEST(BodyOnScreen, ScrubbingShowsAtLeastThirtyFramesASecond) {
  NEEDS_GRAPHICS();
  DemoViews views({900, 700});
  ASSERT_TRUE(views.show_estimate());
  const int count = views.shown.state_count();
  ASSERT_GT(count, 2);
  const auto sweep = [&](QWidget& drawn, int frames) {
    QElapsedTimer timer;
    timer.start();
    for (int frame = 0; frame < frames; ++frame) {
      views.strip->slider()->setValue(frame % count);
      drawn.repaint();
      QCoreApplication::processEvents();
    }
    return 1000.0 * frames / static_cast<double>(std::max<qint64>(1, timer.elapsed()));
  };
  sweep(views.window, 2 * count);
  const double all = sweep(views.window, 60);
  RecordProperty("frames_per_second_all_views", static_cast<int>(all));
  std::printf("scrubbing all views in 900 x 700: %.0f frames a second (%d states)\n", all, count);
  EXPECT_GT(all, 0.0);
}

}  // namespace
}  // namespace wrapgauge
