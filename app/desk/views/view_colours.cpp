#include "app/desk/views/view_colours.hpp"

#include <QPalette>

namespace wrapgauge {

ViewColours view_colours(const QWidget& widget) {
  const bool dark = widget.palette().color(QPalette::Window).lightness() < 128;
  if (dark) return {QColor(38, 37, 42), QColor(236, 234, 240), QColor(28, 27, 32, 215)};
  return {QColor(252, 252, 253), QColor(28, 26, 34), QColor(255, 255, 255, 222)};
}

QColor severity_colour(Severity severity) {
  const QColor colours[] = {QColor(0x7a, 0x76, 0x84), QColor(0xb0, 0x7a, 0x10), QColor(0xc2, 0x3b, 0x22),
                            QColor(0x9c, 0x12, 0x4a)};
  return colours[static_cast<std::size_t>(severity)];
}

}  // namespace wrapgauge
