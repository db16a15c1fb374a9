#pragma once
#include <vector>

#include "model/body/skin_region.hpp"
#include "model/core/result.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

// The plan's regions with the points of those that lie near one of the body's own sites, as forms bring them.
// Problem: a name that is neither a landmark nor a bony site of the plan or the body; the known ones are
// listed.
Result<std::vector<SkinRegion>> placed_regions(const Plan& plan, const std::vector<BonySite>& body_sites);

}  // namespace wrapgauge
