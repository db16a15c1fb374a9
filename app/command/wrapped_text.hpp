#pragma once
// Text for a terminal of 80 columns.

#include <string>
#include <string_view>

namespace wrapgauge {

inline constexpr std::size_t kColumns = 80;

// Columns that UTF-8 text takes, a letter each.
std::size_t columns_of(std::string_view text);

// Broken between words; lines after the first begin with `indent` spaces. Ends with a line break.
std::string wrapped(std::string_view text, std::size_t indent = 0);

// `text`, filled with spaces to `width` columns; on the left of it for figures.
std::string left_aligned(std::string text, std::size_t width);
std::string right_aligned(const std::string& text, std::size_t width);

// A page of help: each line that is too long broken, its rest below where its description begins.
std::string wrapped_help(std::string_view page);

}  // namespace wrapgauge
