#include "model/inflation/possible_state.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/core/said_problem.hpp"
#include "model/inflation/cavity.hpp"
#include "model/inflation/cavity_load.hpp"

namespace wrapgauge {
namespace {

Problem impossible(const InflationSetup& setup, Phrase what) {
  if (setup.misfit)
    return not_converged(Phrase::worded(
        "The shape that was found is impossible: %1 Nothing of it is shown; correct how it fits. %2",
        {std::move(what), *setup.misfit}));
  return not_converged(
      Phrase::worded("The shape that was found is impossible: %1 Nothing of it is shown; take a finer mesh, "
                     "or sheets and a closing length that press less on each other.",
                     {std::move(what)}));
}

Phrase inlet_name(const InflationSetup& setup, std::size_t group) {
  return name_of(setup.layout.inlets[index_of(setup.flat.group_inlet[group])].name);
}

Phrase millilitres_of(double volume_m3) {
  return figures_of(fixed_text(volume_m3 * 1e6, 3) + " mL");
}

// Share of the thinner sheet that the sheets are through one another where it is the most, as a cell's mean.
double through_one_another(const InflationSetup& setup, const std::vector<GapCell>& cells,
                           const Points3& positions_m) {
  const double thinner_m =
      std::min(setup.layout.skin_sheet.thickness.si(), setup.layout.outer_sheet.thickness.si());
  double most = 0.0;
  for (const GapCell& cell : cells)
    most = std::max(most, -gap_volume_m3(cell, positions_m) / (cell.rest_area_m2 * thinner_m));
  return most;
}

std::optional<Problem> why_not_these_volumes(const InflationSetup& setup, const PrismVolumes& volumes,
                                             double least_m3) {
  for (std::size_t g = 0; g < volumes.group_m3.size(); ++g)
    if (!(volumes.group_m3[g] >= least_m3))
      return impossible(setup, Phrase::worded("the chambers of inlet '%1' hold %2, less than nothing.",
                                              {inlet_name(setup, g), millilitres_of(volumes.group_m3[g])}));
  for (std::size_t c = 0; c < volumes.chamber_m3.size(); ++c)
    if (!(volumes.chamber_m3[c] >= least_m3))
      return impossible(setup, Phrase::worded("chamber '%1' holds %2, less than nothing.",
                                              {name_of(setup.layout.chambers[c].name),
                                               millilitres_of(volumes.chamber_m3[c])}));
  return std::nullopt;
}

// By Boyle's law, of the volume between the sheets and the pressure that the state tells.
double air_now_m3(double pressure_pa, double volume_m3, const ClosedAir& air) {
  return (pressure_pa / kAtmospherePa + 1.0) * (volume_m3 + air.dead_m3);
}

}  // namespace

std::optional<Problem> why_impossible(const InflationSetup& setup, const SheetMesh& sheet,
                                      const std::vector<GapCell>& cells, const EquilibriumState& state,
                                      const std::vector<std::optional<ClosedAir>>& air,
                                      const PossibleState& may_miss) {
  const double through = through_one_another(setup, cells, state.positions_m);
  if (!(through <= may_miss.sheet_share))
    return impossible(
        setup, Phrase::worded("the sheets lie %1 % of the thinner one's thickness through one another.",
                              {figures_of(fixed_text(100.0 * through, 1))}));
  const PrismVolumes volumes = volumes_by_prisms(setup.flat, sheet, state.positions_m);
  if (auto problem = why_not_these_volumes(setup, volumes, may_miss.least_volume_m3)) return problem;
  for (std::size_t g = 0; g < air.size(); ++g) {
    if (!air[g]) continue;
    const double now_m3 =
        air_now_m3(state.group_pressure_pa(static_cast<Eigen::Index>(g)), volumes.group_m3[g], *air[g]);
    if (!(std::abs(now_m3 - air[g]->air_m3) <= may_miss.air_share * air[g]->air_m3))
      return impossible(setup, Phrase::worded("of %1 of air closed in at inlet '%2' there is now %3.",
                                              {millilitres_of(air[g]->air_m3), inlet_name(setup, g),
                                               millilitres_of(now_m3)}));
  }
  return std::nullopt;
}

}  // namespace wrapgauge
