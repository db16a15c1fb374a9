#pragma once
// A smooth curve through points: what a DXF SPLINE means that gives no control points.
//
// Cubic spline interpolation over the chord lengths: slope and curvature go on at every point; an end has the
// given direction, or else no curvature (natural end); a closed curve goes on at its start too
// [de Boor, A Practical Guide to Splines, 1978, chapter IV; from memory]. The DXF reference does not say how
// a program draws between the points, so another may differ a little there.

#include <array>
#include <optional>
#include <vector>

#include "model/geometry/polygon.hpp"

namespace wrapgauge {

using CubicPiece = std::array<Vec2, 4>;  // control points of a cubic Bezier curve

struct FitPoints {
  std::vector<Vec2> points;
  bool closed = false;
  std::optional<Vec2> start_direction, end_direction;  // any length above 0
};

// One piece from each point to the next. Points that repeat the one before are dropped; empty when fewer than
// two (closed: three) are left.
std::vector<CubicPiece> spline_through(const FitPoints& fit);

}  // namespace wrapgauge
