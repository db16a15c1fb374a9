#pragma once
#include "model/geometry/polygon.hpp"

namespace wrapgauge {

// The largest circle inside a loop that holds no point of the welds in it: how far the sheets span freely.
// Metres; the radius is right within 0.1 mm for circles wider than 3 mm. Zero where there is no room.
struct FreeCircle {
  Vec2 centre_m = Vec2::Zero();
  double radius_m = 0.0;
};
FreeCircle largest_free_circle(const Polygon& loop, const std::vector<Polygon>& welds);

}  // namespace wrapgauge
