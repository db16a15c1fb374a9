#pragma once
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge {

// A closed loop in the flat layout plane, counter-clockwise, last point not repeated, metres.
using Polygon = std::vector<Vec2>;
// An open path, metres.
using Polyline = std::vector<Vec2>;

double signed_area_m2(const Polygon& polygon);  // > 0 when counter-clockwise
double perimeter_m(const Polygon& polygon);
bool contains(const Polygon& polygon, const Vec2& point);  // even-odd rule; the boundary may go either way

}  // namespace wrapgauge
