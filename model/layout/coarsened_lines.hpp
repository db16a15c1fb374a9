#pragma once
// Drawn curves with no more corners than a coarse mesh can use.

#include <functional>

#include "model/layout/layout_lines.hpp"

namespace wrapgauge {

// Runs of drawn segments become one chord each where the mesh would follow every one of them for nothing: a
// chord is no longer than `longest_m`, the points it leaves out lie within a twentieth of that of it, and
// their turns add up to 40 degrees at most, so corners stay and a circle keeps its roundness. On a smooth
// curve of radius r the area cut off is at most longest_m^2/(12 r) a metre of it. Only points where two
// segments with the same regions on their sides meet are left out, and none that `kept` holds for. Of all
// such ways one with the fewest chords is taken, the most even of those. Lines still meet at shared points
// alone, and other lines are several times farther from a chord than what it cuts off. Same input, same
// lines.
LayoutLines coarsened_lines(const LayoutLines& lines, double longest_m,
                            const std::function<bool(const Vec2&)>& kept);

}  // namespace wrapgauge
