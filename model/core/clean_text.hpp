#pragma once
#include <string>
#include <string_view>

namespace wrapgauge {

// Without control characters (C0, DEL and, in UTF-8, C1), which a terminal would obey: line breaks and tabs
// become spaces, the others go. For names and other words out of files.
std::string clean_text(std::string_view text);

// The same for text of several lines that the program wrote itself: line breaks stay.
std::string clean_lines(std::string_view text);

}  // namespace wrapgauge
