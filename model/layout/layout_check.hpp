#pragma once
// Does the drawing make sense? Every problem found, each with its place.

#include <vector>

#include "model/core/result.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

// Looks for: numbers that are not finite or absurd (layouts below 5 mm or above 3 m), missing thickness,
// names used twice, loops that cross themselves, chambers and channels that overlap or leave the outline,
// seams thinner than the thicker sheet, inset seams at or beyond their chamber's wall, inlets that feed
// nothing or share a group, chambers that no inlet reaches, channels that lead nowhere, straps that touch
// nothing, a closure beyond the layout. Empty when nothing was found. Coordinates in the messages are mm.
std::vector<Problem> check_layout(const Layout& layout);

}  // namespace wrapgauge
