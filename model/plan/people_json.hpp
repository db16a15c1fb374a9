#pragma once
// What people answer for, as plans write it. Faults are reported to `object`.

#include "model/core/json_object.hpp"
#include "model/limits/people.hpp"

namespace wrapgauge {

SitesConfirmed sites_confirmed_from_json(JsonObject& object);
Clearance clearance_from_json(JsonObject& object);

}  // namespace wrapgauge
