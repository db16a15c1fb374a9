#pragma once
// Findings about the tissue's compression and about the device itself: bulges that run away, stretched
// sheets, seams, slipping, forces that do not balance.

#include <vector>

#include "model/limits/finding.hpp"

namespace wrapgauge {

// Of a test object nothing about tissue, which it has not.
std::vector<Finding> device_findings(const LimitSet& limits, const LimitInputs& inputs,
                                     const InflationSetup& setup, const LoadPath& path,
                                     const ContactFigures& figures, const Audit& audit);

}  // namespace wrapgauge
