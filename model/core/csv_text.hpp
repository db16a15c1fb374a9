#pragma once
#include <string>

namespace wrapgauge {

// A text as a quoted field: quotes doubled, control characters left out; one that a spreadsheet would run as
// a formula is led by an apostrophe.
std::string csv_field(const std::string& text);

}  // namespace wrapgauge
