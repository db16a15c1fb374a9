#pragma once
#include <optional>
#include <string>

#include "model/contact/contact_map.hpp"

namespace wrapgauge {

// One header line and one line a chamber; comma, quotes doubled inside quoted names, decimal point, LF.
// A name that a spreadsheet would run as a formula is led by an apostrophe.
// `limits_override`, when set, stands in a last column of every line.
std::string chambers_csv(const ContactFigures& figures,
                         const std::optional<std::string>& limits_override = std::nullopt);

}  // namespace wrapgauge
