#pragma once
#include <string>
#include <string_view>

namespace wrapgauge {

// "#rrggbb" for #rgb, rgb(r, g, b) and the 17 colour words of CSS 2.1, 4.3.6; otherwise the text in small
// letters without white space around it.
std::string plain_colour(std::string_view text);

}  // namespace wrapgauge
