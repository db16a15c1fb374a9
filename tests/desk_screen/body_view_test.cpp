#include <QSlider>
#include <QTest>

#include "app/desk/views/raster_drawing.hpp"
#include "app/desk/views/vtk_drawing.hpp"
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

// The share of pixels whose colours anybody would tell apart.
double differing(const QImage& a, const QImage& b) {
  constexpr int kTold = 24;
  int count = 0;
  for (int y = 0; y < a.height(); ++y)
    for (int x = 0; x < a.width(); ++x) {
      const QColor one = a.pixelColor(x, y), other = b.pixelColor(x, y);
      count += std::max({std::abs(one.red() - other.red()), std::abs(one.green() - other.green()),
                         std::abs(one.blue() - other.blue())}) > kTold;
    }
  return static_cast<double>(count) / (a.width() * a.height());
}

// Counts the frames of whatever canvas the body is drawn on.
class PaintCounter : public QObject {
 public:
  explicit PaintCounter(int& count) : count_(count) {}
  bool eventFilter(QObject*, QEvent* event) override {
    count_ += event->type() == QEvent::Paint;
    return false;
  }

 private:
  int& count_;
};

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
      ASSERT_TRUE(wait_until_at_rest(views.window));
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

TEST(BodyOnScreen, TheFallbackShowsTheSameBodyInTheSameColours) {
  NEEDS_GRAPHICS();
  DemoViews views({900, 700});
  ASSERT_TRUE(views.show_estimate());
  const int last = views.shown.state_count() - 1;
  const auto part = std::make_shared<const ScenePart>(contact_part(views.shown, last));
  BodyFrame frame;
  frame.scene = std::make_shared<const BodyScene>(BodyScene{views.shown.skin(), {part}});
  frame.view.rows = limb_view_rows(views.shown.body()->axis.direction, Vec3(0.6, -0.8, 0.0));
  frame.view.centre_m = frame.scene->worn()->points_m.colwise().mean().transpose();
  frame.view.pixels_per_m = 1500.0;
  frame.view.width = 400;
  frame.view.height = 300;
  for (const int ratio : {1, 2}) {
    frame.pixels = QSize(400, 300) * ratio;
    frame.pixel_ratio = ratio;
    const QImage vtk = VtkDrawing().picture(frame), raster = raster_picture(frame);
    ASSERT_EQ(vtk.size(), raster.size());
    EXPECT_GT(distinct_colours(vtk), 60);
    EXPECT_LT(differing(vtk, raster), 0.05) << "at pixel ratio " << ratio;  // edges of lines
    EXPECT_GT(differing(vtk, raster.mirrored(true, false)), 0.15);          // the measure tells another body
  }
}

TEST(BodyOnScreen, ScrubbingDrawsAFrameForEachStepAndShowsEveryStateAsItIs) {
  DemoViews views({900, 700});
  ASSERT_TRUE(views.show_estimate());
  const int count = views.shown.state_count();
  ASSERT_GT(count, 2);
  int drawn = 0;
  auto* canvas = views.body->findChild<QWidget*>("canvas");
  ASSERT_TRUE(canvas);
  PaintCounter counter(drawn);
  canvas->installEventFilter(&counter);
  for (int frame = 1; frame <= 2 * count; ++frame) {
    const int before = drawn;
    views.strip->slider()->setValue((frame + count - 1) % count);
    ASSERT_TRUE(wait_until([&] { return drawn > before; })) << "no frame for step " << frame;
  }
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
