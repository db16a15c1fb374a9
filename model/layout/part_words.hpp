#pragma once
// How sentences about a layout name its parts, places and lengths.

#include <string>

#include "model/layout/flat_mesh.hpp"

namespace wrapgauge {

Phrase part_name(const Layout& layout, const FlatRegion& region);        // "chamber 'left'", "seam"
Phrase part_name_first(const Layout& layout, const FlatRegion& region);  // the same to begin a sentence with
// "Inset spot 1 of chamber 'left'"; `k` counts the chamber's spots, then its lines.
Phrase inset_name_first(const Layout& layout, int chamber, std::size_t k);

// For a drawing: "inlet pump"; a name that says it is an inlet stands alone.
std::string inlet_label(const Inlet& inlet);

std::string in_millimetres(double length_m);  // "12.3 mm"
Phrase at_mm(const Vec2& point_m);            // "(12.0, 30.5) mm"

}  // namespace wrapgauge
