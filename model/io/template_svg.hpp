#pragma once
// The 1:1 template as one plain SVG sheet.

#include <string>

#include "model/casting/template_drawing.hpp"

namespace wrapgauge {

// The layout as layout_svg writes it, and over it a group "template-marks": closing lines, centre line, bony
// sites, distal arrow, words, and a check bar of 50 mm below. Same input, same bytes.
std::string template_svg(const Layout& layout, const TemplateDrawing& drawing);

}  // namespace wrapgauge
