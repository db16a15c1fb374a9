#pragma once
// The soft tissue under each point of the worn layout.

#include "model/body/skin_region.hpp"
#include "model/core/result.hpp"
#include "model/material/tissue.hpp"

namespace wrapgauge {

struct TissueBed {
  Eigen::VectorXd depth_m;              // a flat vertex each: skin to bone
  Eigen::VectorXd stiffness_factor;     // a flat vertex each: on the row's modulus
  Eigen::VectorXd foundation_pa_per_m;  // a flat vertex each
};

// What differs from the tissue row, over the whole body or in parts of it.
struct TissueChanges {
  std::vector<BonySite> sites;
  std::vector<SkinRegion> regions;
  double stiffness_factor = 1.0;  // on the row's modulus
  // Where nobody has said where bones lie they may lie anywhere: no deeper than this.
  std::optional<Length> bone_anywhere{};
};

// Depth: the body's own map at the nearest skin point if it has one, else that of the tissue row, and no more
// than that of a bone that may lie anywhere. Each region in turn brings its depth and stiffness in over its
// fade. Within a bony site's radius the site's depth holds; it fades out to the surroundings over half a
// radius more, so that the stiffness does not jump.
Result<TissueBed> tissue_bed(const Body& body, const TissueSite& tissue, const TissueChanges& changes,
                             const Points3& worn_m);

}  // namespace wrapgauge
