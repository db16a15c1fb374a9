#pragma once
// What else can go wrong: each hazard with what was calculated of it and what keeps it in check. What the
// program cannot know is a row to fill, never a row left out.

#include <optional>
#include <vector>

#include "model/limits/relief.hpp"
#include "model/limits/skin_exposure.hpp"
#include "model/limits/supply.hpp"

namespace wrapgauge {

enum class HazardKind {
  kOverPressure,  // a source that can exceed the limit
  kVeins,         // congestion of veins
  kNerve,
  kCompartment,  // compartment syndrome
  kBulge,
  kBurst,
  kSeam,
  kShear,    // and pinch
  kTrapped,  // cannot get it off
  kVent,     // vents too slowly
  kTube,     // snags or is swallowed
  kFall,
  kStuck,  // electric valve or pump stuck: the relief valve
  kPower,  // lost
  kHeat,   // or cold
  kWarming,
  kRising,
  kAllergy,
  kUncured,  // what uncured silicone gives off
  kLatex,
  kDirt,
};

struct Hazard {
  HazardKind kind = HazardKind::kOverPressure;
  Phrase name;
  Severity severity = Severity::kNote;
  Phrase sentence;  // what was calculated, or what is missing; empty: a cell for the study to fill
  Phrase control;

  bool to_fill() const { return sentence == Phrase{}; }
};

// Room and skin when closed air warms, and the lowest cabin pressure it may meet.
inline constexpr double kRoom_c = 20.0, kSkin_c = 33.0;
inline constexpr Pressure kCabin{75e3};  // about 2400 m, from memory

// Everything a hazard is calculated from. `map`, `figures` and `audit` belong to the last state of `path`.
struct HazardInputs {
  const LimitSet& limits;
  const LimitInputs& use;
  const InflationSetup& setup;
  const LoadPath& path;
  const ContactMap& map;
  const ContactFigures& figures;
  const Audit& audit;
  const std::optional<SkinExposure>& exposure;
  const std::vector<InletRelief>& relief;  // relief_settings() of the same
  const Supply& supply;
  const Filling& filling;
};

// Always the same kinds in the same order, one of each.
std::vector<Hazard> hazards(const HazardInputs& inputs);

// A pad at `celsius` on the skin for `contact`; none below: not warmer or colder than skin.
Hazard heat_hazard(const HeatRule& rule, const Filling& filling, bool sustained);

}  // namespace wrapgauge
