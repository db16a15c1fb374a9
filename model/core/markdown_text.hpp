#pragma once
#include <string>
#include <string_view>

namespace wrapgauge {

// Text as Markdown shows it, letter by letter: no line break, cell border, markup, HTML or link of its own,
// neither in brackets nor as a bare address; at the start of a line no list either. Control characters go.
std::string markdown_text(std::string_view text);

}  // namespace wrapgauge
