#include "model/core/pressure_text.hpp"

#include "model/core/number_text.hpp"

namespace wrapgauge {

std::string pressure_text(Pressure pressure) {
  return fixed_text(pressure / kPa, 1) + " kPa (" + fixed_text(pressure / mmHg, 0) + " mmHg)";
}

}  // namespace wrapgauge
