#include "model/core/clean_text.hpp"

namespace wrapgauge {
namespace {

// Length of a control character that begins at `at`; 0: none does.
std::size_t control_at(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) {
    return at + i < text.size() ? static_cast<unsigned char>(text[at + i]) : 0u;
  };
  const auto third_from = [&](unsigned first, unsigned last) { return byte(2) >= first && byte(2) <= last; };
  if (byte(0) < 0x20 || byte(0) == 0x7F) return 1;
  if (byte(0) == 0xC2 && byte(1) >= 0x80 && byte(1) < 0xA0) return 2;
  const bool lines_and_turns = byte(0) == 0xE2 && byte(1) == 0x80 && third_from(0xA8, 0xAE);
  const bool isolated_turns = byte(0) == 0xE2 && byte(1) == 0x81 && third_from(0xA6, 0xA9);
  const bool no_characters = byte(0) == 0xEF && byte(1) == 0xBF && third_from(0xBE, 0xBF);
  return lines_and_turns || isolated_turns || no_characters ? 3 : 0;
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
