#pragma once
// States of a path settled anew after the sheets' laws or thicknesses have changed a little: a few steps
// each, where the whole path would take hundreds. For devices off every body: what the skin grips depends on
// the way there, which a state does not hold.

#include "model/inflation/load_path.hpp"

namespace wrapgauge {

struct KnownState {
  EquilibriumState state;  // of the same mesh
  InflationWaypoint targets;
};

// One each, in their order, each from its own shape. `empty_volume_m3`: of each group where the path began,
// which trapped air counts too. Problems: kNotConverged, kCancelled, kBadInput where a body is there.
Result<std::vector<EquilibriumState>> settle_again(const InflationSetup& setup,
                                                   const std::vector<KnownState>& known,
                                                   const Eigen::VectorXd& empty_volume_m3,
                                                   const InflationOptions& options, Progress& progress);

}  // namespace wrapgauge
