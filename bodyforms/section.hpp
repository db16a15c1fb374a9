#pragma once
// The closed-form outline of a limb across its axis.

#include <array>
#include <numbers>
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge {

inline constexpr double kTurn = 2.0 * std::numbers::pi;  // rad

// An outline with the polar radius 1 + h0 sin 2a + h1 cos 3a + h2 sin 3a + h3 cos 4a + h4 sin 4a, then
// stretched along x until its width over its depth is `aspect`. sin 2a makes an oval lie askew, 3a makes it
// a rounded triangle, 4a a rounded square. All zero: an ellipse.
struct Section {
  double aspect = 1.0;                   // width along x over depth along y
  std::array<double, 5> harmonics = {};  // sin 2, cos 3, sin 3, cos 4, sin 4; shares of the mean radius
};

// Points round the outline, counter-clockwise, evenly spaced in the angle before the stretch; its size has no
// meaning.
std::vector<Vec2> section_outline(const Section& section, int count);

// `count` points at equal lengths along a dense closed outline, the first one `shift` steps from its start.
std::vector<Vec2> evenly_spaced(const std::vector<Vec2>& outline, int count, double shift);

double perimeter_of(const std::vector<Vec2>& outline);

}  // namespace wrapgauge
