#include "model/plan/as_written.hpp"

#include <nlohmann/json.hpp>

#include "model/plan/plan_from_json.hpp"
#include "model/plan/plan_to_json.hpp"

namespace wrapgauge {

Result<Plan> as_written(const Plan& plan) {
  return plan_from_json(plan_to_json(plan), plan.folder, "the changed plan");
}

}  // namespace wrapgauge
