#include "model/core/rounded_down.hpp"

#include <cmath>

#include "model/core/number_text.hpp"

namespace wrapgauge {

double rounded_down(double value, double step) {
  return std::floor(value / step + 1e-6) * step;
}

Pressure setting_of(Pressure pressure) {
  return rounded_down(pressure / kPa, 0.1) * kPa;
}

std::string setting_text(Pressure pressure) {
  const Pressure setting = setting_of(pressure);
  return fixed_text(setting / kPa, 1) + " kPa (" + fixed_text(rounded_down(setting / mmHg, 1.0), 0) +
         " mmHg)";
}

}  // namespace wrapgauge
