#pragma once
// The soft tissue under each point of the worn layout.

#include "model/body/body.hpp"
#include "model/core/result.hpp"
#include "model/material/tissue.hpp"

namespace wrapgauge {

struct TissueBed {
  Eigen::VectorXd depth_m;              // a flat vertex each: skin to bone
  Eigen::VectorXd foundation_pa_per_m;  // a flat vertex each
};

// Depth: the body's own map at the nearest skin point if it has one, else that of the tissue row. Within a
// bony site's radius the site's depth holds; it fades out to the surroundings over half a radius more, so
// that the stiffness does not jump. `stiffness_factor` multiplies the tissue's modulus.
Result<TissueBed> tissue_bed(const Body& body, const std::vector<BonySite>& sites, const TissueSite& tissue,
                             double stiffness_factor, const Points3& worn_m);

}  // namespace wrapgauge
