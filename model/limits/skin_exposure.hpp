#pragma once
// Exposure of every place under the device over the planned session.

#include <optional>
#include <vector>

#include "model/contact/contact_map.hpp"
#include "model/limits/exposure.hpp"
#include "model/limits/finding.hpp"

namespace wrapgauge {

struct SkinExposure {
  Eigen::VectorXd product_pa_s;      // a flat vertex each, after the model factor
  Eigen::VectorXd share;             // of what the row there allows
  double worst_share = 0.0;          // at the place below
  Phrase worst_part;                 // "chamber 'left'", "strap 'closing'", "a seam"
  std::optional<Vec3> worst_at_m{};  // on the skin
  LimitRow worst_row;                // with the times that hold there
  Exposure worst;
  std::vector<BrokenTime> broken;  // of the rows' times, each rule where it is broken worst
  Pressure still_pressed;          // highest while every inlet is vented and the device stays fastened
  Time first_check;                // the earliest of the rows' and of half the allowed product
  Time rest_after;
};

// Pressure at a level is read off the load path between its recorded states; a place under a chamber or
// channel follows its own inlet, any other place the highest level of all. `map`: of the last state. None
// without a session in `inputs`, and of a test object.
std::optional<SkinExposure> skin_exposure(const LimitSet& limits, const LimitInputs& inputs,
                                          const InflationSetup& setup, const LoadPath& path,
                                          const ContactMap& map, const ContactFigures& figures);

std::vector<Finding> exposure_findings(const LimitSet& limits, const SkinExposure& exposure);

}  // namespace wrapgauge
