#include "model/limits/deflated_state.hpp"

namespace wrapgauge {

const EquilibriumState* deflated_state(const InflationSetup& setup, const LoadPath& path) {
  constexpr double kNoAir_pa = 1.0;
  if (!setup.layout.closure || path.states.size() < 2) return nullptr;
  const EquilibriumState& first = path.states.front();
  const bool inflated = first.group_pressure_pa.size() > 0 && first.group_pressure_pa.maxCoeff() > kNoAir_pa;
  return inflated ? nullptr : &first;
}

}  // namespace wrapgauge
