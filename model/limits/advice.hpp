#pragma once
// One thing to do about a place that is pressed too hard, which fits the place: a strap is widened and never
// made a larger chamber, and nothing is gained by less air where the fastening alone presses too hard.

#include <optional>

#include "model/body/body.hpp"
#include "model/limits/limit_set.hpp"
#include "model/limits/pressed_part.hpp"

namespace wrapgauge {

struct TooHard {
  PressedKind part = PressedKind::kChamber;
  SiteClass row = SiteClass::kSoft;  // the row that holds there
  std::optional<SiteKind> site{};    // what lies close under the skin; none: nothing known
  bool fastening_alone = false;      // deflated it presses too hard already
  bool has_closure = true;           // the device can be fastened more loosely
};

Phrase advice(const TooHard& place);

}  // namespace wrapgauge
