#pragma once
// Figures of findings as the note prints them.

#include <string>
#include <vector>

#include "model/limits/finding.hpp"

namespace wrapgauge {

// "4.2 kPa (32 mmHg)", "31 %", "1.62 times", "19.0 kPa·min (143 mmHg·min)"; `value` in the amount's unit.
std::string amount_text(Amount amount, double value);
// With as many more digits as show that `value` lies above `limit`, where it does.
std::string amount_text_against(Amount amount, double value, double limit);
// The limit with as many digits as the value beside it.
std::string limit_text_beside(Amount amount, double limit, double value);

// A line that a reading must not cross, "2.6 kPa (20 mmHg)": its kPa are rounded down.
std::string at_most_text(Pressure pressure);

std::string share_text(double share);  // "112 %"; above 1 never "100 %"

std::string place_text(const Finding& finding);  // as its card names it, else where it was found

// A finding without the bracket that names status and source, which stands in the table of limits.
std::string without_source(const std::string& sentence);

// "Above limit: left back"; words alone where it is a note.
std::string marked(Severity severity, const std::string& words);

}  // namespace wrapgauge
