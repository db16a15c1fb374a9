#pragma once
// The settings of a ceiling as the answers of many runs keep them.

#include <nlohmann/json_fwd.hpp>
#include <vector>

#include "model/study/ceiling.hpp"

namespace wrapgauge {

// Inlet, kPa and mL each, to a millionth.
nlohmann::ordered_json settings_json(const std::vector<CeilingInlet>& inlets);
// Throws what the library throws where a key is missing or holds something else.
std::vector<CeilingInlet> settings_from(const nlohmann::json& json);

}  // namespace wrapgauge
