#pragma once
// Forms that drawn paths may stand for.

#include <optional>

#include "model/layout/drawing.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

// A closed rectangle, in any direction, as the line along its longer side with its shorter side as width.
// Corners may be off by 1 % of the shorter side.
std::optional<InsetLine> as_strip(const DrawnPath& path);

// A closed path whose points lie on a circle, to 1 % of its radius and 8 points at least.
std::optional<DrawnCircle> as_circle(const DrawnPath& path);

// Of the closed paths of one shape: does it lie inside another, and does the fill rule leave it empty inside?
bool lies_in_another(const DrawnShape& shape, const DrawnPath& path);
bool is_hole(const DrawnShape& shape, const DrawnPath& path);

Vec2 middle_m(
    const DrawnShape& shape);  // of the circle, else of the first path: centroid, or halfway along it

}  // namespace wrapgauge
