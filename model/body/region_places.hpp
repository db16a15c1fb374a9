#pragma once
// Regions of the skin that lie near a named place, with the point of that place filled in.

#include <vector>

#include "model/body/skin_region.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// Named places on one body: the plan's own come first where both have a name.
struct NamedPlaces {
  const std::vector<Landmark>& landmarks;   // the plan's
  const std::vector<BonySite>& plan_sites;  // the plan's
  const std::vector<BonySite>& body_sites;  // as forms bring them
};

// `regions` with the points of those that lie near one of the body's own sites. Problem: a name that is
// neither a landmark nor a bony site of the plan or the body; the known ones are listed.
Result<std::vector<SkinRegion>> placed_regions(std::vector<SkinRegion> regions, const NamedPlaces& places);

}  // namespace wrapgauge
