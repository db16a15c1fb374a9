#pragma once
// What would let a body be read that could not be: found by trying it.

#include "model/plan/plan.hpp"

namespace wrapgauge {

enum class BodyNeed { kOtherFile, kOtherUnit, kMending, kOtherMending, kOtherMeasures };

// Of a plan whose body cannot be read as the plan says. Reads the file again for each thing that is tried.
BodyNeed body_need(const Plan& plan);

}  // namespace wrapgauge
