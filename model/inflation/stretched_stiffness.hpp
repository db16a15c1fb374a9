#pragma once
// How stiffly a sheet bends as it is stretched now, as a share of its stiffness at rest; docs/05-inflation.md
// derives it.

#include <array>
#include <vector>

#include "model/core/jet.hpp"
#include "model/material/hyperelastic.hpp"

namespace wrapgauge {

// D over its value at rest, of a sheet stretched equally both ways to `area_ratio` times its area. A sheet
// crushed below 0.6 of its area counts as crushed by the step that is tried, not as grown thick: there its
// stiffness goes on as a parabola instead of to infinity.
Jet<1> stretched_stiffness(const HyperelasticLaw& law, const Jet<1>& area_ratio);

// The same from a table: every Newton step asks for it in every triangle. Pieces of the fifth degree that
// meet with value, slope and curvature of the law itself, so that an energy and its derivatives stay each
// other's; values within 1e-7 of the law's. Refers to the law.
class StretchedStiffness {
 public:
  explicit StretchedStiffness(const HyperelasticLaw& law);
  Jet<1> at(const Jet<1>& area_ratio) const;

 private:
  const HyperelasticLaw* law_;
  std::vector<std::array<double, 6>> pieces_;  // coefficients of the way along a piece, 0 to 1
};

}  // namespace wrapgauge
