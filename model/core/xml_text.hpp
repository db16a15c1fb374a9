#pragma once
#include <string>

namespace wrapgauge {

// Text as it may stand in XML 1.0 or HTML, between tags or in a quoted attribute: & < > " are escaped;
// control characters, which cannot be written at all, become spaces.
std::string xml_text(const std::string& text);

}  // namespace wrapgauge
