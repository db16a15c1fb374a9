#pragma once
// Findings about the pressure on the skin.

#include <vector>

#include "model/limits/finding.hpp"

namespace wrapgauge {

std::vector<Finding> pressure_findings(const LimitSet& limits, const LimitInputs& inputs,
                                       const LoadPath& path, const EquilibriumState& state,
                                       const ContactMap& map, const ContactFigures& figures);

// A cuff round the limb: closeness to a tourniquet, pressure that rises towards the trunk.
std::vector<Finding> cuff_findings(const LimitSet& limits, const InflationSetup& setup,
                                   const ContactFigures& figures);

}  // namespace wrapgauge
