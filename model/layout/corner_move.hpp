#pragma once
// A corner of a drawn loop moved, with its rounding.

#include "model/geometry/polygon.hpp"

namespace wrapgauge {

// The loop with the corner that `point` belongs to moved by `by_m`. A sharp corner is its one point. A
// rounding
// - three or more points, short against the edges beside them, that turn one way by 15 to 150 degrees - goes
// along as a whole: it and the roundings next to it go on touching the edges between them, and shrink where
// these grow too short. A loop that is round throughout has no corners: the point then goes alone. As many
// points as before, in the same order. `point` must be one of the loop's.
Polygon with_corner_moved(Polygon loop, std::size_t point, const Vec2& by_m);

}  // namespace wrapgauge
