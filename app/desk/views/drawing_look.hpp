#pragma once
// How a shape of a drawing looks as the part that it becomes: a colour and a hatch, so that neither is needed
// to tell parts apart.

#include <QColor>
#include <QIcon>
#include <QPainter>
#include <QPainterPath>
#include <optional>

#include "model/layout/drawing_map.hpp"

namespace wrapgauge {

struct PartLook {
  QColor line;
  double width = 1.6;  // pixels of the view
  Qt::PenStyle style = Qt::SolidLine;
  std::optional<double> hatch_deg = {};  // none: not hatched
  bool crossed = false;                  // hatched the other way too
  bool filled = false;                   // as dark as its line
};
// None: nothing says what it is.
PartLook part_look(std::optional<DrawnPart> part);

// Lines at an angle over the path, as wide apart in pixels at any zoom.
void fill_hatched(QPainter& painter, const QPainterPath& path, const PartLook& look);
// The path with its ground, hatch and rim.
void draw_part(QPainter& painter, const QPainterPath& path, std::optional<DrawnPart> part, bool closed);
void draw_part_swatch(QPainter& painter, const QRectF& at, std::optional<DrawnPart> part);
QIcon part_icon(std::optional<DrawnPart> part, const QWidget& beside);

}  // namespace wrapgauge
