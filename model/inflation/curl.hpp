#pragma once
// The rest curvature of a fused stack whose sheets were stretched differently when they were fused: it curls
// towards the sheet that was stretched more. Small strain, as in Timoshenko 1925, "Analysis of bi-metal
// thermostats": with the heights z_k of the sheets' middles over the neutral surface, free strains e_k =
// -ln(prestretch_k) along x,
//   kappa = sum E t z e / sum E (t^3/12 + t z^2).
// Hinges bend from the angle that this curvature gives them.

#include "model/inflation/sheet_elements.hpp"

namespace wrapgauge {

// Height over the layout is 1/2 kappa x^2 when nothing holds the stack: > 0 curls away from the body.
double natural_curvature_per_m(const SheetElement& element);

// Of two plates in series, each at its own rest curvature.
double shared_curvature_per_m(const SheetElement& one, const SheetElement& two);

}  // namespace wrapgauge
