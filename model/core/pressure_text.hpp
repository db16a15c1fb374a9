#pragma once
#include <string>

#include "model/core/quantity.hpp"

namespace wrapgauge {

std::string pressure_text(Pressure pressure);  // "4.2 kPa (32 mmHg)", the digits a prediction deserves

}  // namespace wrapgauge
