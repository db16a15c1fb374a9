#pragma once
// What can be wrong with loops, and how two loops lie to one another.

#include <optional>

#include "model/geometry/polygon.hpp"

namespace wrapgauge {

// A point where the loop crosses or touches itself; none for a simple loop.
std::optional<Vec2> self_crossing(const Polygon& loop);

struct ClosestPlaces {
  double distance_m;
  Vec2 on_first, on_second;
};
// The smallest gap between the lines of two loops (0 where they cross), whichever lies inside the other.
ClosestPlaces closest_places(const Polygon& first, const Polygon& second);

double common_area_m2(const Polygon& a, const Polygon& b);

// The point of `inner` farthest outside `outer`, and how far that is; none when all of it is inside or on the
// line.
struct Outside {
  Vec2 point;
  double distance_m;
};
std::optional<Outside> farthest_outside(const Polygon& inner, const Polygon& outer);

}  // namespace wrapgauge
