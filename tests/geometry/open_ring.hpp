#pragma once
// A loop that bends round what is not its own: its box's middle lies outside of it.

#include <cmath>
#include <numbers>

#include "model/geometry/polygon.hpp"

namespace wrapgauge {

// `degrees` (below 360, whole fives) of a ring round the origin, from the x axis on.
inline Polygon open_ring(double inner_m, double outer_m, double degrees) {
  constexpr double kPiece_degrees = 5.0;
  const int pieces = static_cast<int>(degrees / kPiece_degrees);
  Polygon ring;
  const auto add = [&](int k, double radius_m) {
    const double angle = degrees / 180.0 * std::numbers::pi * k / pieces;
    ring.emplace_back(radius_m * std::cos(angle), radius_m * std::sin(angle));
  };
  for (int k = 0; k <= pieces; ++k) add(k, outer_m);
  for (int k = pieces; k >= 0; --k) add(k, inner_m);
  return ring;
}

}  // namespace wrapgauge
