#pragma once
// Findings about the tissue's compression and about the device itself: bulges that run away, stretched
// sheets, seams, slipping, forces that do not balance.

#include <vector>

#include "model/limits/finding.hpp"

namespace wrapgauge {

std::vector<Finding> device_findings(const LimitSet& limits, const InflationSetup& setup,
                                     const LoadPath& path, const ContactFigures& figures, const Audit& audit);

}  // namespace wrapgauge
