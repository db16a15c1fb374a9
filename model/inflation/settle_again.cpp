#include "model/inflation/settle_again.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/said_problem.hpp"
#include "model/inflation/newton.hpp"
#include "model/inflation/possible_state.hpp"

namespace wrapgauge {
namespace {

CavityLoad load_of(const InflationTarget& target, double empty_m3, double pressure_pa,
                   const VolumeWalkSettings& settings) {
  if (const auto* air = std::get_if<TrappedAir>(&target))
    return CavityLoad::trapped_air(empty_m3 + air->dead.si() + air->pushed.si(), air->dead.si());
  if (const auto* pressure = std::get_if<Pressure>(&target)) return CavityLoad::pressure(pressure->si());
  const double volume_m3 = std::get<Volume>(target).si();
  return CavityLoad::liquid(volume_m3, pressure_pa,
                            settings.liquid_stiffness *
                                std::max(settings.liquid_floor_pa, std::abs(pressure_pa)) /
                                std::max(settings.liquid_floor_m3, volume_m3));
}

Problem not_settled(NewtonEnd end, const Factorisation& factorisation) {
  if (end == NewtonEnd::kCancelled)
    return said_problem(ProblemKind::kCancelled, Phrase::worded("Cancelled before the target."));
  if (end == NewtonEnd::kLibraryFailed && factorisation.failure()) return *factorisation.failure();
  return not_converged(Phrase::worded("No equilibrium was found near the one that is known."));
}

EquilibriumState state_of(const InflationSetup& setup, const EquilibriumSystem& system,
                          const NewtonResult& result) {
  EquilibriumState state;
  state.positions_m = result.positions_m;
  state.group_pressure_pa = result.group_pressure_pa;
  state.group_volume_m3 = result.group_volume_m3;
  state.contact_pressure_pa = state.contact_area_m2 = state.indentation_m =
      Eigen::VectorXd::Zero(setup.flat.vertices_m.rows());
  state.contact_force_n = Points3::Zero(setup.flat.vertices_m.rows(), 3);
  state.plate_force_n = plate_forces_n(setup.plates, system.plate_nodes(), result.positions_m);
  state.residual_n = result.residual_n;
  state.iterations = result.iterations;
  return state;
}

// What a step by pressure alone must not do: find another equilibrium far away, past a maximum in between.
bool jumped(const EquilibriumState& from, const NewtonResult& to, const LoadSettings& settings) {
  return ((to.group_volume_m3.array() - 1e-7) > settings.jump * from.group_volume_m3.array().abs()).any();
}

}  // namespace

Result<std::vector<EquilibriumState>> settle_again(const InflationSetup& setup,
                                                   const std::vector<KnownState>& known,
                                                   const Eigen::VectorXd& empty_volume_m3,
                                                   const InflationOptions& options, Progress& progress) {
  if (setup.body)
    return bad_input(Phrase::worded("A state on a body depends on the way there: inflate it anew."));
  EquilibriumSystem system(setup, options);
  auto factorisation = make_factorisation(system.tangent(), options.settings.factors);
  if (!factorisation) return factorisation.problem();
  Factorisation factors = std::move(factorisation).value();
  NewtonOptions how;
  how.residual_tolerance = options.residual_tolerance;
  how.max_iterations = options.max_iterations;
  std::vector<EquilibriumState> states;
  for (const KnownState& one : known) {
    std::vector<CavityLoad> loads;
    for (std::size_t g = 0; g < one.targets.size(); ++g) {
      const auto i = static_cast<Eigen::Index>(g);
      loads.push_back(load_of(one.targets[g], empty_volume_m3(i), one.state.group_pressure_pa(i),
                              options.settings.volume_walk));
    }
    const NewtonResult result =
        find_equilibrium(system, factors, loads, one.state.positions_m, how, progress);
    if (!result.converged()) return not_settled(result.end, factors);
    if (jumped(one.state, result, options.settings.load) ||
        system.most_stretched(result.positions_m).share > 1.0)
      return not_settled(NewtonEnd::kRanAway, factors);
    states.push_back(state_of(setup, system, result));
    if (auto problem = why_impossible(setup, system.sheet(), system.cells(), states.back(),
                                      std::vector<std::optional<ClosedAir>>(loads.size())))
      return *problem;
  }
  return states;
}

}  // namespace wrapgauge
