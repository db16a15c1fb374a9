#pragma once
#include "model/geometry/polygon.hpp"

namespace wrapgauge {

// A map of the plane that takes one box to another.
struct BoxMap {
  Vec2 from_m, scale, to_m;
  Vec2 operator()(const Vec2& point) const { return to_m + scale.cwiseProduct(point - from_m); }
};

inline void map_loop(Polygon& loop, const BoxMap& map) {
  for (Vec2& point : loop) point = map(point);
}

}  // namespace wrapgauge
