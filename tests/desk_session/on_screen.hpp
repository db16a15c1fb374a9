#pragma once
#include <QGuiApplication>
#include <QImage>
#include <QPixmap>
#include <QScreen>

namespace wrapgauge {

// Whether a pixel of the screen, whoever drew it, is such a one; every seventh is looked at.
template <class IsIt>
bool on_screen(const IsIt& is_it) {
  const QImage screen = QGuiApplication::primaryScreen()->grabWindow(0).toImage();
  for (int y = 10; y < screen.height(); y += 7)
    for (int x = 10; x < screen.width(); x += 7)
      if (is_it(screen.pixelColor(x, y))) return true;
  return false;
}

inline bool is_bright(const QColor& colour) {
  return colour.lightness() > 200;
}

}  // namespace wrapgauge
