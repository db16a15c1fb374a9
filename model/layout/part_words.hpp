#pragma once
// How sentences about a layout name its parts, places and lengths.

#include <string>

#include "model/layout/flat_mesh.hpp"

namespace wrapgauge {

std::string part_name(const Layout& layout, const FlatRegion& region);  // "chamber 'left'", "seam"
// "inset spot 1 of chamber 'left'"; `k` counts the chamber's spots, then its lines.
std::string inset_name(const Layout& layout, int chamber, std::size_t k);
std::string capitalised(std::string words);  // to begin a sentence with; for a small first letter

std::string in_millimetres(double length_m);  // "12.3 mm"
std::string at_mm(const Vec2& point_m);       // "(12.0, 30.5) mm"

}  // namespace wrapgauge
