#pragma once
// How findings about casting name parts, places and lengths. Sentences are phrases: the window says them in
// its own language.

#include "model/core/phrase.hpp"
#include "model/layout/layout_shapes.hpp"

namespace wrapgauge {

Phrase part_phrase(const Layout& layout, const FlatRegion& region);  // "chamber 'left'"; seams have no name
Phrase inset_phrase(const Layout& layout, int chamber, std::size_t k);  // `k`: spots first, then lines
Phrase place_phrase(const Vec2& point_m);                               // "(12.0, 30.5) mm"
Phrase length_phrase(double length_m);                                  // "12.3 mm"

// Whether a figure is more than a ten thousandth above the most it should be: rounding alone is no fault.
bool exceeds(double figure, double most);

// A measured figure and its threshold, with as many decimals (1 to 4) as show that they differ.
struct ToldApart {
  Phrase value, threshold;
};
ToldApart told_apart(double value, double threshold, const std::string& unit);  // unit: " mm", " %" or ""
ToldApart lengths_told_apart(double length_m, double threshold_m);

}  // namespace wrapgauge
