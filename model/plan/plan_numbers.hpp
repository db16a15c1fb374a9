#pragma once
// Ranges and units that the readers and writers of a plan's parts share.

#include <cmath>
#include <nlohmann/json.hpp>

#include "model/core/array.hpp"
#include "model/core/json_object.hpp"
#include "model/core/quantity.hpp"

namespace wrapgauge {

inline constexpr NumberRange kCoordinate{-1e5, 1e5, "mm"};
inline constexpr NumberRange kDepth{0.5, 300.0, "mm"};
inline constexpr NumberRange kStation{0.0, 3000.0, "mm"};

inline Vec3 point_m(JsonObject& object, const char* key) {
  const std::vector<double> xyz = object.numbers(key, 3, kCoordinate);
  return 1e-3 * Vec3(xyz[0], xyz[1], xyz[2]);
}

// So that writing, reading and writing again gives the same text in spite of the change of unit.
inline double tidy(double value) {
  return std::round(value * 1e6) / 1e6;
}

inline double in_mm(Length length) {
  return tidy(length / mm);
}
inline nlohmann::ordered_json in_mm(const Vec3& point_m) {
  return {tidy(1e3 * point_m.x()), tidy(1e3 * point_m.y()), tidy(1e3 * point_m.z())};
}

}  // namespace wrapgauge
