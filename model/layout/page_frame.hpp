#pragma once
// The page that a drawing is on, and the frame of the layout that is made of it.

#include "model/layout/drawing.hpp"

namespace wrapgauge {

// Where a place of the drawing lies in the layout; none: no shape is the outline.
std::optional<Vec2> in_layout_m(const Drawing& drawing, const DrawingMap& map, const Vec2& drawn_m);
// And where a place of the layout lies in the drawing.
std::optional<Vec2> in_drawing_m(const Drawing& drawing, const DrawingMap& map, const Vec2& point_m);

}  // namespace wrapgauge
