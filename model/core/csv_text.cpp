#include "model/core/csv_text.hpp"

#include "model/core/clean_text.hpp"

namespace wrapgauge {

std::string csv_field(const std::string& text) {
  std::string field = "\"";
  if (!text.empty() && std::string("=+-@").find(text[0]) != std::string::npos) field += '\'';
  for (const char c : clean_text(text)) {
    if (c == '"') field += '"';
    field += c;
  }
  return field + "\"";
}

}  // namespace wrapgauge
