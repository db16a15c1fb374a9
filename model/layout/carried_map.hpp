#pragma once
// What drawings of ours carry besides their lines: a mapping file (drawing_map_json.hpp) as one line of text,
// with all of a layout that no line shows, so that the drawing reads back as the same layout.

#include <string>
#include <string_view>

#include "model/layout/drawing.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

// Name, sheets, backing, strap cloths, closure, bonded rim, and where the outline's lower left corner lies.
// Groups or layers are called like their parts, so nothing is to be guessed.
std::string carried_text(const Layout& layout);

// Takes such a text out of a drawing; any other text changes nothing. One that was spoilt is named in a note.
void take_carried(std::string_view text, Drawing& drawing);

}  // namespace wrapgauge
