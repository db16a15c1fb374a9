#pragma once
// The real window on a screen that is not there, with settings and data of its own.

#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBrowser>
#include <filesystem>

#include "app/desk/window/main_window.hpp"
#include "app/desk/window/message_bar.hpp"
#include "app/desk/window/plan_column.hpp"
#include "app/desk/window/view_area.hpp"
#include "tests/desk_views/at_rest.hpp"

namespace wrapgauge {

class WindowTest : public testing::Test {
 protected:
  WindowTest() : window_(root()) {
    const QStringList size =
        qEnvironmentVariable("WRAPGAUGE_TEST_SIZE", QStringLiteral("1400x900")).split(QChar('x'));
    window_.resize(size.value(0).toInt(), size.value(1).toInt());
    window_.show();
  }
  // What was asked to be deleted or drawn later is, while the window is still there.
  ~WindowTest() override { wait_until_at_rest(window_); }

  // Folders are named anew for each test, so that none finds what another left.
  std::filesystem::path root() const { return folder_.path().toStdString(); }

  bool wait_for_result() {
    return wait_until([&] {
      return window_.session().solved() && window_.session().stale().empty() &&
             !window_.session().runner().busy();
    });
  }
  // The result as it is looked at: every state read, the note made, everything in its place.
  bool wait_for_views() {
    return wait_for_result() && wait_until([this] { return all_is_there(); }) && wait_until_at_rest(window_);
  }

  // Kept in the build folder, to be looked at.
  void picture(const QString& name) {
    EXPECT_TRUE(wait_until([this] { return all_is_there(); })) << "the picture would be half made";
    take_picture(window_, name);
  }
  // Every state read, the note made.
  bool all_is_there() {
    const ShownPlan& shown = window_.views().shown();
    for (int state = 0; state < shown.state_count(); ++state)
      if (!shown.contact(state)) return false;
    const auto* note = named<QTextBrowser>(QStringLiteral("note preview"));
    return !note->isVisible() || !note->toPlainText().startsWith(QStringLiteral("The note is being made"));
  }
  // Maps are drawn anew for their size a while after it was changed.
  static constexpr int kDrawnAnew_ms = 250;
  static void take_picture(QWidget& widget, const QString& name) {
    const QString folder = qEnvironmentVariable("WRAPGAUGE_PICTURES", QStringLiteral(WRAPGAUGE_SCREENSHOTS));
    QDir().mkpath(folder);
    wait_until_at_rest(widget);
    let_pass(kDrawnAnew_ms);
    fewer_shades(widget.grab().toImage()).save(folder + QChar('/') + name + QStringLiteral(".png"), "PNG", 0);
  }
  // 32 shades a channel are enough to look at a window, and take half the room on disk.
  static QImage fewer_shades(const QImage& picture) {
    QImage fewer = picture.convertToFormat(QImage::Format_RGB888);
    for (int y = 0; y < fewer.height(); ++y)
      for (int x = 0; x < 3 * fewer.width(); ++x) {
        uchar& shade = fewer.scanLine(y)[x];
        shade = static_cast<uchar>((shade & 0xf8) | (shade >> 5));
      }
    return fewer;
  }

  template <class Widget>
  Widget* named(const QString& name) {
    return window_.findChild<Widget*>(name);
  }

  QTemporaryDir folder_;
  MainWindow window_;
};

}  // namespace wrapgauge
