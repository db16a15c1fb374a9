#pragma once
#include <QColor>
#include <QWidget>

#include "model/limits/finding.hpp"

namespace wrapgauge {

// Paper and ink of the drawings, after the widget's palette: pale by day, dark grey in a dark palette.
struct ViewColours {
  QColor paper, ink, plate;  // plate: under words on a drawing
};
ViewColours view_colours(const QWidget& widget);

// Colours that read on a pale and on a dark ground.
QColor severity_colour(Severity severity);

}  // namespace wrapgauge
