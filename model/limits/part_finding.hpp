#pragma once
// Findings about who wears it where: what the part of the body forbids, and what nobody knows about it.

#include <vector>

#include "model/limits/finding.hpp"

namespace wrapgauge {

// Source key of the finding that a clinician may answer.
inline constexpr const char* kAllRoundRule = "all round chest, abdomen or head";

// A test object; a part or bony sites that are not known; neck and face; chest, abdomen or head pressed all
// round, with and without a clinician who allows it.
std::vector<Finding> part_findings(const LimitSet& limits, const LimitInputs& inputs,
                                   const ContactFigures& figures);

}  // namespace wrapgauge
