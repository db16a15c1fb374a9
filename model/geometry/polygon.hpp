#pragma once
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge {

// A closed loop in the flat layout plane, counter-clockwise, last point not repeated, metres.
using Polygon = std::vector<Vec2>;
// An open path, metres.
using Polyline = std::vector<Vec2>;

// Of the parallelogram that the two span, signed; > 0 when b lies to the left of a.
inline double cross(const Vec2& a, const Vec2& b) {
  return a.x() * b.y() - a.y() * b.x();
}

// Whether the boxes round the segments a b and c d have no point in common.
inline bool boxes_apart(const Vec2& a, const Vec2& b, const Vec2& c, const Vec2& d) {
  return (a.cwiseMax(b).array() < c.cwiseMin(d).array()).any() ||
         (c.cwiseMax(d).array() < a.cwiseMin(b).array()).any();
}

double signed_area_m2(const Polygon& polygon);  // > 0 when counter-clockwise
double perimeter_m(const Polygon& polygon);
double length_m(const Polyline& path);
bool contains(const Polygon& polygon, const Vec2& point);  // even-odd rule; the boundary may go either way

// The same loop, counter-clockwise, with points that repeat the one before them left out.
Polygon counter_clockwise(Polygon polygon);

struct Bounds2 {
  Vec2 low = Vec2::Zero(), high = Vec2::Zero();
};
Bounds2 bounds(const std::vector<Vec2>& points);  // all zero for no points

double distance_to_segment_m(const Vec2& point, const Vec2& a, const Vec2& b);
// Distance from the point to the loop itself, inside or outside; infinite for an empty loop.
double distance_to_loop_m(const Polygon& polygon, const Vec2& point);

}  // namespace wrapgauge
