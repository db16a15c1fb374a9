#pragma once
// Edits of one part of a layout; each gives the changed layout.

#include <optional>
#include <string>

#include "model/layout/box_map.hpp"
#include "model/layout/layout_part.hpp"

namespace wrapgauge {

// What lies in a chamber goes with it: inset seams, inlets, and the points of channels.
void map_chamber(Layout& layout, std::size_t chamber, const BoxMap& map);
Layout with_part_moved(Layout layout, const LayoutPart& part, const Vec2& by_m);
// None: the part has no name of its own, or another one of its kind has this name.
std::optional<Layout> with_name(Layout layout, const LayoutPart& part, const std::string& name);
Layout without_part(Layout layout, const LayoutPart& part);

// New parts go beside or inside what is there: a chamber right of the outline's middle, a spot or line in the
// middle of the chamber, a channel from it to the next chamber, an inlet in it, a strap where the outline
// ends along x.
Layout with_new_part(Layout layout, LayoutPart::Kind kind, std::size_t chamber);

}  // namespace wrapgauge
