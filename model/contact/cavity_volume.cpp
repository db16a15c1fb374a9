#include "model/contact/cavity_volume.hpp"

#include "model/inflation/cavity.hpp"

namespace wrapgauge {

std::vector<Volume> chamber_volumes(const InflationSetup& setup, const SheetMesh& sheet,
                                    const EquilibriumState& state) {
  const FlatMesh& flat = setup.flat;
  const std::vector<double> own = volumes_by_prisms(flat, sheet, state.positions_m).chamber_m3;
  std::vector<double> of_group(static_cast<std::size_t>(state.group_volume_m3.size()), 0.0);
  for (std::size_t c = 0; c < own.size(); ++c) of_group[index_of(flat.chamber_group[c])] += own[c];
  std::vector<Volume> volumes;
  for (std::size_t c = 0; c < own.size(); ++c) {
    const std::size_t g = index_of(flat.chamber_group[c]);
    const double share = of_group[g] != 0.0 ? own[c] / of_group[g] : 0.0;
    volumes.emplace_back(share * state.group_volume_m3[static_cast<Eigen::Index>(g)]);
  }
  return volumes;
}

}  // namespace wrapgauge
