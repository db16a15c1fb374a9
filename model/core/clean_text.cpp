#include "model/core/clean_text.hpp"

namespace wrapgauge {
namespace {

// Length of a control character that begins at `at`; 0: none does.
std::size_t control_at(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  if (byte(at) < 0x20 || byte(at) == 0x7F) return 1;
  const bool c1 = byte(at) == 0xC2 && at + 1 < text.size() && byte(at + 1) >= 0x80 && byte(at + 1) < 0xA0;
  return c1 ? 2 : 0;
}

std::string without_controls(std::string_view text, bool keep_lines) {
  std::string clean;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = control_at(text, at);
    if (length == 0)
      clean += text[at];
    else if (keep_lines && text[at] == '\n')
      clean += '\n';
    else if (text[at] == '\n' || text[at] == '\r' || text[at] == '\t')
      clean += ' ';
    at += length == 0 ? 1 : length;
  }
  return clean;
}

}  // namespace

std::string clean_text(std::string_view text) {
  return without_controls(text, false);
}

std::string clean_lines(std::string_view text) {
  return without_controls(text, true);
}

}  // namespace wrapgauge
