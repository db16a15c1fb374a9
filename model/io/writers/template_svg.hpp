#pragma once
// The 1:1 template as one plain SVG sheet.

#include <string>

#include "model/casting/template_drawing.hpp"

namespace wrapgauge {

// One user unit is 1 mm; y is turned over. One group a kind of line, named as stroke_name says; a group
// "marks" with inlets, distal arrow, words and a check bar of 50 mm below. Same input, same bytes.
std::string template_svg(const TemplateDrawing& drawing);

}  // namespace wrapgauge
