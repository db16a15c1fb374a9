#pragma once
// The plan's `supply` and `filling`. Include from .cpp files only.

#include "model/core/json_object.hpp"
#include "model/limits/supply.hpp"

namespace wrapgauge {

void read_supply(JsonObject& object, Supply& supply);
void read_filling(JsonObject& object, Filling& filling);

// Null for one that says nothing.
nlohmann::ordered_json supply_to_json(const Supply& supply);
nlohmann::ordered_json filling_to_json(const Filling& filling);

}  // namespace wrapgauge
