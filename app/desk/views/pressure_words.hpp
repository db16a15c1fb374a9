#pragma once
#include <QString>

#include "app/desk/views/selection.hpp"
#include "model/core/quantity.hpp"

namespace wrapgauge {

// "4.2 kPa (32 mmHg)", the chosen unit first.
QString pressure_words(Pressure pressure, PressureUnit first);

}  // namespace wrapgauge
