#pragma once
#include <filesystem>
#include <nlohmann/json_fwd.hpp>
#include <string>

#include "model/plan/plan.hpp"

namespace wrapgauge {

// `folder`: where relative files start; `where` names the plan for people.
Result<Plan> plan_from_json(const nlohmann::json& value, const std::filesystem::path& folder,
                            const std::string& where);

}  // namespace wrapgauge
