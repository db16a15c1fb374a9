#pragma once
#include "model/inflation/load_path.hpp"

namespace wrapgauge {

// The device fastened and not yet inflated: what the closure alone does. Null: the device has no closure, or
// the path begins with an inflated state.
const EquilibriumState* deflated_state(const InflationSetup& setup, const LoadPath& path);

}  // namespace wrapgauge
