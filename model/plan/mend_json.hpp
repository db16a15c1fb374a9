#pragma once
#include <nlohmann/json_fwd.hpp>
#include <vector>

#include "model/body/mend_step.hpp"
#include "model/core/json_object.hpp"

namespace wrapgauge {

// One entry of a plan's "mend" list: {"step": "fill holes", "up_to_mm": 60}. What is left out is the default;
// faults are reported to `object`.
MendStep mend_step_from_json(JsonObject& object);

// Every parameter is written, so that a later default changes no plan.
nlohmann::ordered_json mend_steps_to_json(const std::vector<MendStep>& steps);

}  // namespace wrapgauge
