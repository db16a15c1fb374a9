#pragma once
// A rigid, frictionless indenter pressed into flat tissue: the layer by itself, by the same response, springs
// and passes that a worn device meets (coupled_layer, coupled_equilibrium).

#include "model/core/result.hpp"
#include "model/inflation/coupled_layer.hpp"

namespace wrapgauge {

struct RigidIndentation {
  Eigen::VectorXd force_n;     // a place each, >= 0
  Eigen::VectorXd lowering_m;  // of the skin, a place each
  double depth_m = 0.0;        // of the indenter's lowest point below the skin at rest
  int passes = 0;
};

struct IndentationOptions {
  double fit = 1e-3;  // skin and indenter differ nowhere by more than this share of the depth
  int max_passes = 400;
};

// `rise_m`: the indenter's height above its lowest point over each place. `load_n`: pushing down, > 0.
// Problems: kBadInput when sizes do not match or the layer is none; kNotConverged.
Result<RigidIndentation> press_rigid(const TissueLayer& layer, const SkinPlaces& places,
                                     const Eigen::VectorXd& rise_m, double load_n,
                                     const IndentationOptions& options = {});

}  // namespace wrapgauge
