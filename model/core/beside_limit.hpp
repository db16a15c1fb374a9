#pragma once
// Figures that stand beside a limit. Rounding hides no excess and makes none: a value above its limit is
// shown with as many digits of kPa as it takes to stand above it, one at or below it never stands above it.
// The mmHg follow the kPa that are shown and never contradict them; within half a mmHg both may read the
// same.

#include <string>

#include "model/core/phrase.hpp"

namespace wrapgauge {

// "3.0 kPa (23 mmHg)"; more digits where the limit has them, so that it is never rounded.
Phrase limit_figures(Pressure limit);

// "3.004 kPa (22.53 mmHg)" beside 3.0 kPa.
Phrase figures_beside(Pressure value, Pressure limit);

// A share of a limit: "101 %", "100.2 %".
Phrase percent_beside(double share);

// A plain number beside a limit that is shown with `decimals`: "2.004" beside "2.0".
std::string number_beside(double value, double limit, int decimals);

}  // namespace wrapgauge
