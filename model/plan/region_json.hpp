#pragma once
#include <nlohmann/json_fwd.hpp>
#include <vector>

#include "model/body/skin_region.hpp"
#include "model/core/json_object.hpp"

namespace wrapgauge {

Landmark landmark_from_json(JsonObject& object);
// A region may be placed by the name of any of `landmarks`, and on a form also by a name that is not known
// yet (its point is found when the form is built); faults are reported to `object`.
SkinRegion region_from_json(JsonObject& object, const std::vector<Landmark>& landmarks, bool form);

nlohmann::ordered_json landmarks_to_json(const std::vector<Landmark>& landmarks);
nlohmann::ordered_json regions_to_json(const std::vector<SkinRegion>& regions);

}  // namespace wrapgauge
