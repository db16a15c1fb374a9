#pragma once
// The places on the skin that are pressed and have something to be said of, one spot a place.

#include <vector>

#include "model/limits/limit_place.hpp"
#include "model/limits/pressed_part.hpp"
#include "model/limits/pressure_finding.hpp"

namespace wrapgauge {

// Where a part presses hardest, or the device over a bony site.
struct PressedSpot {
  PressedPart part;
  std::vector<const BonySite*> sites;
  Pressure peak;      // mean over 1 cm2
  Pressure deflated;  // the same with the device fastened only
  Vec3 at_m = Vec3::Zero();
  PlaceLimit place;  // its row is never null

  double share() const { return peak / place.row->limit; }  // before the model factor
};

// One for each chamber; then, joined to a spot that shares its square centimetre or part and site, the
// highest pressure outside chambers and that over each bony site, the strictest of what is joined standing;
// then one for each stretch of skin above its limit in which no spot lies. None on a test object.
std::vector<PressedSpot> pressed_spots(const LimitSet& limits, const LimitInputs& inputs,
                                       const PressedState& pressed);

}  // namespace wrapgauge
