#pragma once
// A layout in which chambers that share an inlet are fed apart.

#include <string>
#include <vector>

#include "model/plan/plan.hpp"

namespace wrapgauge {

struct SeparateChambers {
  Plan plan;                                 // each such chamber with an inlet of its own, by pressure
  std::vector<std::string> closed_channels;  // left out of the drawing: fused shut
};

// `groups`: those to take apart, as `flat` numbers them. Problems: a chamber with no room for an inlet.
Result<SeparateChambers> separate_chambers(const Plan& plan, const FlatMesh& flat,
                                           const std::vector<GroupId>& groups);

}  // namespace wrapgauge
