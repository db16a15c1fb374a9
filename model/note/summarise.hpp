#pragma once
#include "model/note/estimate.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

// The last stage: an estimate in words and figures, from everything in it but its own summary. `inputs`: the
// files it came from.
Summary summarise(const Plan& plan, const Estimate& estimate, std::vector<InputFile> inputs);

}  // namespace wrapgauge
