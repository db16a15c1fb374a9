#include "app/desk/window/share_bar.hpp"

#include <QPainter>
#include <algorithm>

namespace wrapgauge {

void draw_share_bar(QPainter& painter, const QRect& bar, double share, const QColor& mark, const QColor& ink,
                    const QPalette& palette) {
  constexpr double kEnd = 1.5;  // share of the limit at the bar's end
  painter.fillRect(bar, palette.color(QPalette::Midlight));
  QRect filled = bar;
  filled.setWidth(static_cast<int>(bar.width() * std::clamp(share / kEnd, 0.0, 1.0)));
  painter.fillRect(filled, mark);
  const int limit = bar.left() + static_cast<int>(bar.width() / kEnd);
  painter.setPen(QPen(ink, 2));
  painter.drawLine(limit, bar.top() - 2, limit, bar.bottom() + 2);
}

}  // namespace wrapgauge
