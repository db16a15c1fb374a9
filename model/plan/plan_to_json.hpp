#pragma once
#include <nlohmann/json_fwd.hpp>

#include "model/plan/plan.hpp"

namespace wrapgauge {

// Every field, in the order people read them; numbers to a millionth of mm, kPa or mL.
nlohmann::ordered_json plan_to_json(const Plan& plan);

}  // namespace wrapgauge
