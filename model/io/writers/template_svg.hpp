#pragma once
// The 1:1 template as one plain SVG sheet.

#include <string>

#include "model/casting/template_drawing.hpp"

namespace wrapgauge {

// One user unit is 1 mm; y is turned over. One group a kind of line, named as stroke_name says; a group
// "marks" with inlets, distal arrow, words and a check bar of 50 mm below. The description of the page
// carries the layout, so that the template reads back as the same one (template_layout.hpp). Same input, same
// bytes.
std::string template_svg(const TemplateDrawing& drawing, const Layout& layout);

}  // namespace wrapgauge
