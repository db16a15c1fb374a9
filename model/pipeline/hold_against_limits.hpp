#pragma once
// The last stage: what was solved, held against the limits and the planned session.

#include "model/pipeline/prepare.hpp"

namespace wrapgauge {

LimitInputs limit_inputs(const Plan& plan, const Prepared& prepared);

// Fills findings, hazards and exposure of an estimate that has everything else.
void hold_against_limits(const Plan& plan, const Resources& resources, Estimate& estimate);

}  // namespace wrapgauge
