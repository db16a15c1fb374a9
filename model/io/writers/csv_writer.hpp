#pragma once
#include <string>
#include <vector>

#include "model/contact/contact_map.hpp"

namespace wrapgauge {

// One header line and one line a chamber; comma, quotes doubled inside quoted names, decimal point, LF.
// A name that a spreadsheet would run as a formula is led by an apostrophe.
// `not_the_programs_own`: what limits and tables differ from those that the program ships; when there is
// something, it stands in a last column of every line.
std::string chambers_csv(const ContactFigures& figures,
                         const std::vector<std::string>& not_the_programs_own = {});

}  // namespace wrapgauge
