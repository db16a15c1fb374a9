#include "model/limits/limit_share.hpp"

#include <algorithm>
#include <cmath>

namespace wrapgauge {

Eigen::VectorXd share_of_limit(const LimitSet& limits, const LimitInputs& inputs, const InflationSetup& setup,
                               const EquilibriumState& state, const SheetMesh& sheet,
                               const ContactFigures& figures, const Eigen::VectorXd& mean_1cm2_pa) {
  const Eigen::VectorXd limit_pa = limit_on_layout_pa(limits, inputs, setup, state, sheet, figures);
  Eigen::VectorXd share = Eigen::VectorXd::Zero(limit_pa.size());
  for (Eigen::Index v = 0; v < std::min(share.size(), mean_1cm2_pa.size()); ++v)
    if (std::isfinite(limit_pa[v])) share[v] = limits.model_factor * mean_1cm2_pa[v] / limit_pa[v];
  return share;
}

}  // namespace wrapgauge
