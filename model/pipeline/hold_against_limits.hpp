#pragma once
// What was solved, held against the limits and the planned session.

#include "model/note/estimate.hpp"
#include "model/pipeline/resources.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

// Fills limits, findings, hazards and exposure of an estimate whose contact has been read. `relief`: settings
// that were solved; none: those that the path alone gives.
void hold_against_limits(const Plan& plan, const Resources& resources, LimitInputs limit_inputs,
                         std::optional<std::vector<InletRelief>> relief, Estimate& estimate);

}  // namespace wrapgauge
