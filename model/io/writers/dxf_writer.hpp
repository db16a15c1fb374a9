#pragma once
// A layout as an ASCII DXF drawing (R12, millimetres), which the DXF reader turns into the same layout again.
//
// Layers are called OUTLINE, CHAMBERS, INSET_SEAMS, CHANNELS, INLETS and STRAPS. Channels and inset lines are
// polylines as wide as they are, inset spots circles, inlets points. Names, and on the outline all that no
// drawing shows (carried_map.hpp), are extended data of WRAPGAUGE, which drawing programs keep; chambers have
// their names as text on the layer NAMES too.

#include <filesystem>
#include <string>

#include "model/core/result.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

std::string layout_dxf(const Layout& layout);  // coordinates to a millionth of a millimetre
Result<std::monostate> write_layout_dxf(const Layout& layout, const std::filesystem::path& file);

}  // namespace wrapgauge
