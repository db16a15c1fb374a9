#pragma once
// What else can go wrong, each hazard one sentence with its number and one that says what keeps it in check.

#include <vector>

#include "model/limits/finding.hpp"
#include "model/limits/supply.hpp"

namespace wrapgauge {

struct Hazard {
  Phrase name;
  Severity severity = Severity::kNote;
  Phrase sentence;  // what was worked out, or that it was not and what is missing
  Phrase control;
};

// Room and skin when closed air warms, and the lowest cabin pressure it may meet.
inline constexpr double kRoom_c = 20.0, kSkin_c = 33.0;
inline constexpr Pressure kCabin{75e3};  // about 2400 m, from memory

// Everything a hazard is worked out from.
struct HazardInputs {
  const LimitSet& limits;
  const LimitInputs& use;
  const InflationSetup& setup;
  const LoadPath& path;
  const ContactFigures& figures;
  const Supply& supply;
  const Filling& filling;
};

// Always the same hazards in the same order.
std::vector<Hazard> hazards(const HazardInputs& inputs);

// The highest setting of a relief valve: the relief rule on the strictest limit pressed on, lowered where the
// skin is predicted to be pressed harder (after the model factor) than the air inside presses.
Pressure highest_relief(const LimitSet& limits, Pressure strictest_limit, bool circumferential,
                        Pressure gauge, Pressure predicted_peak);

Pressure highest_relief(const HazardInputs& inputs);

// A pad at `celsius` on the skin for `contact`; none below: not warmer or colder than skin.
Hazard heat_hazard(const HeatRule& rule, const Filling& filling, bool sustained);

}  // namespace wrapgauge
