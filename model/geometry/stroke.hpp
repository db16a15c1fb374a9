#pragma once
// Drawn widths and curves as polygons.

#include "model/geometry/polygon.hpp"

namespace wrapgauge {

// A path of a given width as one loop: square ends at the path's ends, mitred corners (bevelled where the
// path turns by more than 120 degrees). The loop crosses itself where the path bends tighter than its width.
// Empty for a path of fewer than two different points or a width that is not positive.
Polygon stroke(const Polyline& path, double width_m);

// A regular polygon of the circle's area (its corners lie a little outside the circle), with a corner at
// angle 0. Sides are a multiple of four and at least 12, so the polygon mirrors onto itself.
Polygon circle_polygon(const Vec2& centre, double radius_m, double longest_side_m);

// Curves flattened so that no chord is farther than `tolerance_m` from the curve.
Polygon flattened_ellipse(const Vec2& centre, const Vec2& radii, double tolerance_m);
Polygon flattened_rectangle(const Vec2& low, const Vec2& size, double corner_radius_m, double tolerance_m);

}  // namespace wrapgauge
