#include "model/inflation/coupled_equilibrium.hpp"

#include "model/inflation/anderson_iteration.hpp"

namespace wrapgauge {
namespace {

constexpr int kMixed = 8;  // guesses that are combined

}  // namespace

NewtonResult find_coupled_equilibrium(EquilibriumSystem& system, Factorisation& factorisation,
                                      const std::vector<CavityLoad>& loads, Points3 start_m,
                                      const NewtonOptions& options, const Progress& progress) {
  TissueContact& tissue = system.tissue();
  AndersonIteration mixing(kMixed);
  NewtonResult result;
  result.positions_m = std::move(start_m);
  for (int pass = 0; pass < kTissuePasses; ++pass) {
    const int before = result.iterations;
    result = find_equilibrium(system, factorisation, loads, std::move(result.positions_m), options, progress);
    result.iterations += before;
    if (!result.converged() || !tissue.is_coupled()) return result;
    const CoupledFit fit = tissue.coupled_fit(result.positions_m);
    if (fit.worst_misfit_m <= kTissueFit * fit.largest_lowering_m) return result;
    tissue.set_lowering_m(mixing.next(tissue.lowering_m(), fit.lowering_m));
  }
  result.end = NewtonEnd::kTissueUnsettled;
  return result;
}

}  // namespace wrapgauge
