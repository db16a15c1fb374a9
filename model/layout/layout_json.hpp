#pragma once
// Layout files: JSON, lengths in mm, stiffness in N/mm. Described in docs/02-layout.md.

#include <filesystem>
#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>

#include "model/core/result.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

// Reads the fields; whether the drawing makes sense is for check_layout. `where` names the place for people,
// e.g. "plan.json, layout". Problems: a key that is missing, unknown or of the wrong kind, a number out of
// range, too many points (20 000 in all). Curves are flattened to within 0.05 mm; loops are turned
// counter-clockwise.
Result<Layout> layout_from_json(const nlohmann::json& value, std::string_view where);
Result<Layout> layout_from_text(std::string_view text, const std::string& where);
Result<Layout> read_layout(const std::filesystem::path& file);  // at most 64 MiB

// Every shape as a polygon, coordinates to a millionth of a millimetre.
nlohmann::json layout_to_json(const Layout& layout);
Result<std::monostate> write_layout(const Layout& layout, const std::filesystem::path& file);

}  // namespace wrapgauge
