#include "app/command/wrapped_text.hpp"

#include <algorithm>

namespace wrapgauge {
namespace {

bool begins_letter(char byte) {
  return (static_cast<unsigned char>(byte) & 0xC0) != 0x80;
}

// Where the description of an option begins: after the first two spaces behind a word. Prose at the margin
// goes on at the margin.
std::size_t description_column(std::string_view line) {
  const std::size_t word = line.find_first_not_of(' ');
  if (word == 0) return 0;
  constexpr std::size_t kFarIn = 20;  // a line that goes on with the description of the one before
  if (word >= kFarIn && word <= kColumns / 2) return word;
  const std::size_t gap = line.find("  ", word);
  const std::size_t start = gap == std::string_view::npos ? gap : line.find_first_not_of(' ', gap);
  return start == std::string_view::npos || start > kColumns / 2 ? std::min<std::size_t>(word + 2, 8) : start;
}

}  // namespace

std::size_t columns_of(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), begins_letter));
}

std::string wrapped(std::string_view text, std::size_t indent) {
  std::string out;
  std::size_t column = 0;
  bool line_is_empty = true;
  while (!text.empty()) {
    // Spaces before a word belong to it, so that columns set by hand stay; at a break they go.
    const std::size_t word = std::min(text.find_first_not_of(' '), text.size());
    const std::size_t end = std::min(text.find(' ', word), text.size());
    std::string_view piece = text.substr(0, end);
    if (!line_is_empty && column + columns_of(piece) > kColumns) {
      out += '\n' + std::string(indent, ' ');
      column = indent;
      piece.remove_prefix(word);
    }
    out += piece;
    column += columns_of(piece);
    line_is_empty = false;
    text.remove_prefix(end);
  }
  return out + '\n';
}

std::string left_aligned(std::string text, std::size_t width) {
  const std::size_t columns = columns_of(text);
  if (columns < width) text.append(width - columns, ' ');
  return text;
}

std::string right_aligned(const std::string& text, std::size_t width) {
  const std::size_t columns = columns_of(text);
  return columns < width ? std::string(width - columns, ' ') + text : text;
}

std::string wrapped_help(std::string_view page) {
  std::string out;
  while (!page.empty()) {
    const std::size_t end = std::min(page.find('\n'), page.size());
    const std::string_view line = page.substr(0, end);
    out += columns_of(line) > kColumns ? wrapped(line, description_column(line)) : std::string(line) + '\n';
    page.remove_prefix(std::min(end + 1, page.size()));
  }
  return out;
}

}  // namespace wrapgauge
