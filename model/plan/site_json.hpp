#pragma once
// A place that bears less, as plans and labels of bodies write it.

#include <nlohmann/json_fwd.hpp>
#include <vector>

#include "model/body/body.hpp"
#include "model/core/json_object.hpp"

namespace wrapgauge {

// Faults are reported to `object`.
BonySite site_from_json(JsonObject& object);
nlohmann::ordered_json sites_to_json(const std::vector<BonySite>& sites);

// A direction of any length above zero, made one of length 1; `advice` ends the sentence that refuses it.
Vec3 direction_from_json(JsonObject& object, const char* key, const Phrase& advice);
nlohmann::ordered_json direction_to_json(const Vec3& direction);

}  // namespace wrapgauge
