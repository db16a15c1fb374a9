#pragma once
// Settings that must not be passed: what is printed is never above what was found, in either unit.

#include <string>

#include "model/core/quantity.hpp"

namespace wrapgauge {

// The highest multiple of `step` at or below `value`; a multiple but for rounding stays itself.
double rounded_down(double value, double step);

// A pressure as it is set and printed: tenths of a kilopascal.
Pressure setting_of(Pressure pressure);

// "4.2 kPa (31 mmHg)": the setting, and the whole millimetres of mercury at or below it.
std::string setting_text(Pressure pressure);

}  // namespace wrapgauge
