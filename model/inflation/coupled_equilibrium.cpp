#include "model/inflation/coupled_equilibrium.hpp"

#include "model/inflation/anderson_iteration.hpp"

namespace wrapgauge {

NewtonResult find_coupled_equilibrium(EquilibriumSystem& system, Factorisation& factorisation,
                                      const std::vector<CavityLoad>& loads, Points3 start_m,
                                      const NewtonOptions& options, const Progress& progress) {
  TissueContact& tissue = system.tissue();
  const TissueSettings& settings = system.settings().tissue;
  AndersonIteration mixing(settings.coupled_mixed);
  NewtonResult result;
  result.positions_m = std::move(start_m);
  for (int pass = 0; pass < settings.coupled_passes; ++pass) {
    const int before = result.iterations;
    result = find_equilibrium(system, factorisation, loads, std::move(result.positions_m), options, progress);
    result.iterations += before;
    if (!result.converged() || !tissue.is_coupled()) return result;
    const CoupledFit fit = tissue.coupled_fit(result.positions_m);
    if (fit.worst_misfit_m <= settings.coupled_fit * fit.largest_lowering_m) return result;
    tissue.set_lowering_m(mixing.next(tissue.lowering_m(), fit.lowering_m));
  }
  result.end = NewtonEnd::kTissueUnsettled;
  return result;
}

}  // namespace wrapgauge
