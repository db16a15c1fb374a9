#pragma once
#include "model/geometry/polygon.hpp"

namespace wrapgauge {

// A place for words within the loop, however it bends: the middle of its box where that lies as deep inside
// as any point does, else the point farthest from the loop. Deepest to within a hundredth of the box's longer
// side. Same loop, same point. Zero for fewer than three points.
Vec2 innermost_point_m(const Polygon& polygon);

}  // namespace wrapgauge
