#include "model/core/csv_text.hpp"

#include <string_view>

#include "model/core/clean_text.hpp"

namespace wrapgauge {
namespace {

// As a spreadsheet sees it, which passes over spaces.
bool begins_formula(std::string_view text) {
  constexpr std::string_view kUnbroken = "\xC2\xA0";
  for (;;) {
    if (text.starts_with(' '))
      text.remove_prefix(1);
    else if (text.starts_with(kUnbroken))
      text.remove_prefix(kUnbroken.size());
    else
      return !text.empty() && std::string_view("=+-@").find(text[0]) != std::string_view::npos;
  }
}

}  // namespace

std::string csv_field(const std::string& text) {
  std::string field = "\"";
  const std::string clean = clean_text(text);
  if (begins_formula(clean)) field += '\'';
  for (const char c : clean) {
    if (c == '"') field += '"';
    field += c;
  }
  return field + "\"";
}

}  // namespace wrapgauge
