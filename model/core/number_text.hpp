#pragma once
// Numbers as people read them, with a decimal point in every locale.

#include <string>

namespace wrapgauge {

std::string number_text(double value, int significant_digits = 6);  // 0.25, 1e-09
std::string fixed_text(double value, int decimals);                 // 4.0; never "-0.0"
std::string number_word(double value);  // shortest text that reads back as the same number

}  // namespace wrapgauge
