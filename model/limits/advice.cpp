#include "model/limits/advice.hpp"

namespace wrapgauge {
namespace {

// After "move the chamber off".
Phrase under_skin(SiteKind kind) {
  switch (kind) {
    case SiteKind::kBone:
      return Phrase::worded("the bone");
    case SiteKind::kNerve:
      return Phrase::worded("the nerve");
    case SiteKind::kVessel:
      return Phrase::worded("the vessel");
    case SiteKind::kTendon:
      break;
  }
  return Phrase::worded("the tendon");
}

Phrase lower_the_pressure(const TooHard& place) {
  if (place.part == PressedKind::kStrap) return Phrase::worded("Lower the pressure or widen the strap.");
  if (place.row == SiteClass::kCircumferential)
    return Phrase::worded("Lower the pressure or press on less of the girth.");
  if (place.row == SiteClass::kBony)
    return Phrase::worded("Lower the pressure, or mark where bone and nerves lie.");
  if (place.part == PressedKind::kChamber)
    return Phrase::worded("Lower the pressure or make the chamber larger.");
  return place.has_closure ? Phrase::worded("Lower the pressure or fasten it more loosely.")
                           : Phrase::worded("Lower the pressure.");
}

}  // namespace

Phrase advice(const TooHard& place) {
  const bool loosen = place.fastening_alone && place.has_closure;
  if (!place.site) return loosen ? Phrase::worded("Fasten it more loosely.") : lower_the_pressure(place);
  const std::vector<Phrase> values = {to_move(place.part), under_skin(*place.site)};
  return loosen ? Phrase::worded("Move %1 off %2 or fasten it more loosely.", values)
                : Phrase::worded("Move %1 off %2 or lower the pressure.", values);
}

}  // namespace wrapgauge
