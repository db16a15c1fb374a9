#pragma once
#include <string>

#include "model/core/quantity.hpp"

namespace wrapgauge {

// "0.05 s", "90 s", "12.5 min", "1 h": in the unit people would use.
std::string time_text(Time time);

}  // namespace wrapgauge
