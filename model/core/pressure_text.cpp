#include "model/core/pressure_text.hpp"

#include "model/core/pressure_figures.hpp"

namespace wrapgauge {

std::string pressure_text(Pressure pressure) {
  return kpa_figure(pressure) + " kPa (" + mmhg_figure(pressure) + " mmHg)";
}

}  // namespace wrapgauge
