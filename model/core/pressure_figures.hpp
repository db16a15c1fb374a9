#pragma once
// The figures of a pressure as they are shown: 0.1 kPa and 1 mmHg, the digits a prediction deserves. The mmHg
// are those of the kPa that are shown, not of the number behind them: one figure in kPa goes with one in mmHg
// wherever it stands. They lie within 0.9 mmHg of the number (half of 0.1 kPa, 0.4 mmHg, and half of 1 mmHg).

#include <charconv>
#include <string>

#include "model/core/number_text.hpp"
#include "model/core/quantity.hpp"

namespace wrapgauge {

inline std::string kpa_figure(Pressure pressure) {
  return fixed_text(pressure / kPa, 1);
}

inline std::string mmhg_figure(Pressure pressure) {
  const std::string shown = kpa_figure(pressure);
  double kilopascal = 0.0;
  std::from_chars(shown.data(), shown.data() + shown.size(), kilopascal);
  return fixed_text(kilopascal * kPa / mmHg, 0);
}

}  // namespace wrapgauge
