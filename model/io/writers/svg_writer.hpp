#pragma once
// A layout as a plain SVG drawing at true size, which the SVG reader turns into the same layout again.
//
// One user unit is 1 mm. Groups are called outline, chambers, inset-seams, channels, inlets and straps; each
// shape's title is the part's name. Channels and inset lines are open lines whose stroke width is their
// width; inset spots and inlets are circles. y is turned over: up in the layout is up on the page.

#include <filesystem>
#include <string>

#include "model/core/result.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

// `margin` is left free on all sides. Coordinates to a millionth of a millimetre. The description of the page
// carries what no line shows (carried_map.hpp).
std::string layout_svg(const Layout& layout, Length margin = 5.0 * mm);
Result<std::monostate> write_layout_svg(const Layout& layout, const std::filesystem::path& file);

}  // namespace wrapgauge
