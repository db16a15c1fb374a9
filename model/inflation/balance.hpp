#pragma once
// How far a shape is from equilibrium, by its forces.

#include "model/inflation/equilibrium_system.hpp"

namespace wrapgauge {

// Largest force left over at a node, N.
double largest_residual_n(const Evaluation& now);

// The largest of them against pressure x nodal area: the highest pressure in a chamber, and no less than
// the settings' floor. Infinite where the energy is not finite.
double out_of_balance(const EquilibriumSystem& system, const Evaluation& now,
                      const std::vector<CavityLoad>& loads);

// Sum of all forces left over, against what touches the body: the sheets' own forces cancel and so do the
// chambers', so this is missing from the body's. 0 without a body. A layout that hardly touches is measured
// against a small share of the floor on all its sheets.
double sum_out_of_balance(const EquilibriumSystem& system, const Evaluation& now, const Points3& positions_m);

}  // namespace wrapgauge
