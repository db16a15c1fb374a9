#include "model/limits/calibration.hpp"

#include "model/core/number_text.hpp"

namespace wrapgauge {

std::string calibrated_words(const Calibration& calibration) {
  // It stands inside a sentence.
  std::string remark = calibration.remark;
  while (remark.ends_with('.') || remark.ends_with(' ')) remark.pop_back();
  return "calibrated on " + std::to_string(calibration.readings) + " readings" +
         (calibration.date.empty() ? "" : " of " + calibration.date) + " (" + calibration.kinds +
         (remark.empty() ? "" : "; " + remark) + "), factor " + number_text(calibration.model_factor, 3);
}

std::string model_words(const std::optional<Calibration>& calibration) {
  if (!calibration) return "Predicted by an uncalibrated model";
  return "Predicted by a model " + calibrated_words(*calibration);
}

}  // namespace wrapgauge
