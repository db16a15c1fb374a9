#pragma once
#include <string>
#include <string_view>

namespace wrapgauge {

// Without control characters (C0, DEL and, in UTF-8, C1), which a terminal would obey, and without what turns
// the direction of writing, breaks lines unseen or is no character (U+2028 to U+202E, U+2066 to U+2069,
// U+FFFE, U+FFFF): line breaks and tabs become spaces, the others go. For names and other words out of files.
std::string clean_text(std::string_view text);

// The same for text of several lines that the program wrote itself: line breaks stay.
std::string clean_lines(std::string_view text);

}  // namespace wrapgauge
