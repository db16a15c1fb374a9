#include "model/core/markdown_text.hpp"

#include "model/core/clean_text.hpp"

namespace wrapgauge {
namespace {

constexpr std::string_view kMarks = "\\`*_~|#<>[]&@";

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

// Where a list would begin: "- x", "+ x", "12. x", "3) x"; or a line under a heading, "===".
std::size_t list_mark(const std::string& text) {
  std::size_t at = 0;
  while (at < text.size() && is_digit(text[at])) ++at;
  if (at == text.size()) return std::string::npos;
  const bool ends = at + 1 == text.size() || text[at + 1] == ' ';
  if (at > 0) return (text[at] == '.' || text[at] == ')') && ends ? at : std::string::npos;
  if (text[0] == '=') return 0;
  return (text[0] == '-' || text[0] == '+') && (ends || text[1] == text[0]) ? 0 : std::string::npos;
}

// What some readers of Markdown make a link of without being asked: "://" and "www.".
bool begins_address(const std::string& text, std::size_t at) {
  if (text.compare(at, 3, "://") == 0) return true;
  if (text[at] != '.' || at < 3) return false;
  for (std::size_t w = at - 3; w < at; ++w)
    if (text[w] != 'w' && text[w] != 'W') return false;
  return true;
}

}  // namespace

std::string markdown_text(std::string_view raw) {
  const std::string text = clean_text(raw);
  const std::size_t mark = list_mark(text);
  std::string out;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (at == mark || kMarks.find(text[at]) != std::string_view::npos || begins_address(text, at))
      out += '\\';
    out += text[at];
  }
  return out;
}

}  // namespace wrapgauge
