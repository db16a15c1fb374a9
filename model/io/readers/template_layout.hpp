#pragma once
// The layout that a template of ours carries whole: its lines are for scissors, not for reading.

#include <string>
#include <string_view>

#include "model/layout/drawing.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

// `svg`, a template without a description, with the layout as its description and a check sum of itself: a
// template that was edited does not pass for the layout it carries.
std::string with_layout(std::string svg, const Layout& layout);

// Takes `description`, the text of such a description in `bytes`, into the drawing: its layout, or why it no
// longer stands for the lines. Any other text changes nothing.
void take_template(std::string_view bytes, const std::string& description, Drawing& drawing);

}  // namespace wrapgauge
