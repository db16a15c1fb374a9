#pragma once
// Plans drawn at random from a seed: every body form, every layout form, all grades, 0.5 to 4 mm, up to 30
// kPa or 60 mL an inlet, anywhere the layout goes on. The same seed gives the same plan.

#include "model/pipeline/pipeline.hpp"

namespace wrapgauge::random_plans {

struct RandomPlan {
  Plan plan;
  Body body;
  std::string words;  // what it is, for a table or a message
};

// Draws until the plan passes every check short of solving; `turned_down` counts the draws before it.
RandomPlan random_plan(unsigned seed, const Resources& resources, int& turned_down);

}  // namespace wrapgauge::random_plans
