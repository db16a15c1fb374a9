#pragma once
// Drawings by the ending of their file: .svg or .dxf.

#include <filesystem>

#include "model/core/result.hpp"
#include "model/layout/drawing.hpp"
#include "model/layout/drawing_map.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

bool is_drawing_file(const std::filesystem::path& file);

Result<Drawing> read_drawing(const std::filesystem::path& file, const DrawingReading& reading);

// Drawing and mapping in one step.
Result<Layout> read_drawn_layout(const std::filesystem::path& file, const DrawingMap& map);

}  // namespace wrapgauge
