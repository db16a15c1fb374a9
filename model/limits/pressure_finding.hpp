#pragma once
// Findings about the pressure on the skin.

#include <vector>

#include "model/limits/finding.hpp"

namespace wrapgauge {

// What pressure findings are read from: one state of a load path.
struct PressedState {
  const InflationSetup& setup;
  const LoadPath& path;
  const EquilibriumState& state;
  const ContactMap& map;
  const ContactFigures& figures;
  // Means over 1 cm2 of the device fastened and deflated, a flat vertex each, Pa; empty: not known.
  Eigen::VectorXd deflated_1cm2_pa;
};
PressedState pressed_state(const InflationSetup& setup, const LoadPath& path, const EquilibriumState& state,
                           const ContactMap& map, const ContactFigures& figures);

// One finding a place: what a chamber, a strap or seam and a bony site say of the same square centimetre is
// one fact, and the strictest of them stands.
std::vector<Finding> pressure_findings(const LimitSet& limits, const LimitInputs& inputs,
                                       const PressedState& pressed);

// A cuff round the limb: closeness to a tourniquet, pressure that rises towards the trunk.
std::vector<Finding> cuff_findings(const LimitSet& limits, const PressedState& pressed);

}  // namespace wrapgauge
