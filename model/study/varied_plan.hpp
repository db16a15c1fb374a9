#pragma once
// A plan with its uncertain inputs set to given values.

#include "model/study/uncertain_input.hpp"

namespace wrapgauge {

struct VariedPlan {
  Plan plan;
  Body body;
  Resources resources;
};

// `values`: one an input, in the input's unit. Girth widens every section about the body's axis, and bony
// sites and an anchor point move with the skin. A closure given by its stretch is closed to that stretch on
// the widened body and then missed by the error of the closing length; one given by its length keeps it, but
// for that error. `body` as body_of_plan gives it. Problems: those of resolve_closing_length.
Result<VariedPlan> varied_plan(const Plan& plan, const Body& body, const Resources& resources,
                               const std::vector<UncertainInput>& inputs, const std::vector<double>& values);

}  // namespace wrapgauge
