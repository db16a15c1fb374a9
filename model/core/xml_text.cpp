#include "model/core/xml_text.hpp"

namespace wrapgauge {
namespace {

// U+FFFE and U+FFFF cannot stand in XML.
std::string without_no_characters(std::string text) {
  for (const char* none : {"\xEF\xBF\xBE", "\xEF\xBF\xBF"})
    for (std::size_t at; (at = text.find(none)) != std::string::npos;) text.erase(at, 3);
  return text;
}

}  // namespace

std::string xml_text(const std::string& text) {
  std::string out;
  for (const char c : without_no_characters(text)) {
    switch (c) {
      case '&':
        out += "&amp;";
        break;
      case '<':
        out += "&lt;";
        break;
      case '>':
        out += "&gt;";
        break;
      case '"':
        out += "&quot;";
        break;
      default:
        out += static_cast<unsigned char>(c) < 32 ? ' ' : c;
    }
  }
  return out;
}

}  // namespace wrapgauge
