#pragma once
// What readings of a real device have made of the model: factors on its mechanics, the factor that
// predictions are multiplied by, and what a seam holds. Of one layout, its materials, one part and posture.

#include <optional>
#include <string>

#include "model/body/body_part.hpp"
#include "model/inflation/sheet_factors.hpp"
#include "model/material/posture.hpp"

namespace wrapgauge {

struct SeamHold {
  LineTension holds;  // the lowest reading, less what its error may hide
  int readings = 0;
};

struct Calibration {
  int readings = 0;
  std::string kinds;         // "6 strip, 8 fill, 12 contact"
  std::string date, remark;  // as the readings say; invented ones say so in the remark
  SheetFactors factors;      // tissue: 1 where it was a dummy's
  double model_factor = 1.5;
  std::string model_factor_why;  // one sentence
  std::optional<SeamHold> seams;
  std::optional<BodyPart> part;    // of the limb that contact was read on
  std::optional<Posture> posture;  // the same
  std::string layout_hash, materials_hash, readings_hash;
  std::string readings_file;  // as seen from the calibration's folder
};

// "calibrated on 40 readings of 2026-11-30 (6 strip, ...; the remark, if there is one), factor 1.27".
std::string calibrated_words(const Calibration& calibration);
// "Predicted by an uncalibrated model", or by one that is calibrated on what.
std::string model_words(const std::optional<Calibration>& calibration);

}  // namespace wrapgauge
