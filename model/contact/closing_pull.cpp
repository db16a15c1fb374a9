#include "model/contact/closing_pull.hpp"

#include "model/inflation/closure.hpp"

namespace wrapgauge {

Force closing_pull(const InflationSetup& setup, const SheetMesh& sheet, const EquilibriumState& state,
                   double stitch_pa) {
  Vec3 pull_n = Vec3::Zero();
  for (const Stitch& stitch : closure_stitches(setup.flat, sheet.skin_node, stitch_pa))
    for (std::size_t a = 0; a < stitch.stencil.nodes.size(); ++a)
      pull_n += stitch.stiffness_n_per_m * stitch.weights(static_cast<Eigen::Index>(a)) *
                state.positions_m.row(stitch.stencil.nodes[a]).transpose();
  return Force(pull_n.norm());
}

}  // namespace wrapgauge
