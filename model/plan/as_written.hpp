#pragma once
#include "model/plan/plan.hpp"

namespace wrapgauge {

// What is read when the plan is written and read again: numbers are rounded there, and a mesh may come out
// another for the last digit. Problems: a file that the plan names cannot be read.
Result<Plan> as_written(const Plan& plan);

}  // namespace wrapgauge
