#pragma once
// Mapping files: JSON, lengths in mm. Described in docs/02-drawings.md.

#include <filesystem>
#include <nlohmann/json_fwd.hpp>
#include <string>

#include "model/layout/drawing_map.hpp"

namespace wrapgauge {

Result<DrawingMap> drawing_map_from_json(const nlohmann::json& value, const std::string& where);
Result<DrawingMap> read_drawing_map(const std::filesystem::path& file);

nlohmann::ordered_json drawing_map_to_json(const DrawingMap& map);
Result<std::monostate> write_drawing_map(const DrawingMap& map, const std::filesystem::path& file);

// Unit names of drawings: px (96 an inch), pt (72 an inch), mm, cm, m, in.
std::optional<Length> drawing_unit_from_name(std::string_view name);

}  // namespace wrapgauge
