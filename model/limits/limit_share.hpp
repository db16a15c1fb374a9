#pragma once
// What share of its limit each place takes. What is hatched, what the probe reads and how high a relief valve
// may be set all ask here.

#include "model/limits/finding.hpp"

namespace wrapgauge {

// A flat vertex each: the mean over 1 cm2 times the model factor, over the limit of the row that holds there;
// above 1 the place is above its limit. 0 where no row holds. `state`, `figures` and `mean_1cm2_pa` (a flat
// vertex each) belong together.
Eigen::VectorXd share_of_limit(const LimitSet& limits, const LimitInputs& inputs, const InflationSetup& setup,
                               const EquilibriumState& state, const SheetMesh& sheet,
                               const ContactFigures& figures, const Eigen::VectorXd& mean_1cm2_pa);

}  // namespace wrapgauge
