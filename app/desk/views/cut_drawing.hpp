#pragma once
// A section of the worn device as a drawing: tissue and bone, sheets in their thickness, air, and an arrow
// for each stretch of skin that is pressed, as long as the predicted pressure.

#include <QPainter>

#include "app/desk/views/selection.hpp"
#include "app/desk/views/view_colours.hpp"
#include "app/picture/cut_section.hpp"

namespace wrapgauge {

struct CutStyle {
  ViewColours colours;
  double top_pa = 1e3;  // the longest arrow, as the colour bar's top
  PressureUnit unit = PressureUnit::kKilopascal;
  bool out_of_date = false;
};

void draw_cut(QPainter& painter, const QRectF& room, const CutSection& section, const CutStyle& style);

}  // namespace wrapgauge
