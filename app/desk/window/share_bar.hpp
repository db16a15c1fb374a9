#pragma once
// A share of a limit as a bar, wherever one is drawn.

#include <QPalette>

#include "app/desk/views/view_colours.hpp"

class QPainter;
class QRect;

namespace wrapgauge {

// The limit is a line across the bar, two thirds along; from one and a half times the limit on it is full.
void draw_share_bar(QPainter& painter, const QRect& bar, double share, const QColor& mark, const QColor& ink,
                    const QPalette& palette);

}  // namespace wrapgauge
