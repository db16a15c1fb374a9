#pragma once
// Fields that layout files and mapping files share. Include from .cpp files only.

#include "model/core/json_object.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

inline constexpr NumberRange kCoordinateRange{-10000.0, 10000.0, "mm"};
inline constexpr NumberRange kSizeRange{0.0, 10000.0, "mm"};
inline constexpr NumberRange kThicknessRange{0.0, 50.0, "mm"};
inline constexpr NumberRange kPrestretchRange{1.0, 2.0, ""};  // judgement: more tears while it is fused
inline constexpr NumberRange kStiffnessRange{0.0, 10000.0, "N/mm"};

// The object under `key`; its first problem becomes the problem of `object`.
Sheet sheet_from(JsonObject& object, const char* key);
Backing backing_from(JsonObject& object);  // "backing"
Closure closure_from(JsonObject& object);  // "closure"

double rounded_mm(double length_m);  // to a millionth of a millimetre
nlohmann::json sheet_json(const Sheet& sheet);
nlohmann::json backing_json(const Backing& backing);
nlohmann::json closure_json(const Closure& closure);

}  // namespace wrapgauge
