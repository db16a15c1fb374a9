#pragma once
#include <string>

#include "model/core/quantity.hpp"

namespace wrapgauge {

// "0.05 s", "90 s", "12.5 min", "1 h": in the unit people would use.
std::string time_text(Time time);

// "40 s", "12 min", "3 h": of a time that is a guess.
std::string rough_time_text(Time time);

}  // namespace wrapgauge
