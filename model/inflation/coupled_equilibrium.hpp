#pragma once
// An equilibrium on tissue that sinks round a pressed place too. The lowering that the other nodes' forces
// cause is held during a Newton solve and brought up to date between solves, mixed by Anderson's method,
// until the sheet and the skin fit together. On tissue that is a plain foundation it is one Newton solve.

#include "model/inflation/newton.hpp"

namespace wrapgauge {

NewtonResult find_coupled_equilibrium(EquilibriumSystem& system, Factorisation& factorisation,
                                      const std::vector<CavityLoad>& loads, Points3 start_m,
                                      const NewtonOptions& options, const Progress& progress);

}  // namespace wrapgauge
