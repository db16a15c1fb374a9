#pragma once
// Who wears the device, who watches, and who answers for what the program cannot know. Whatever is not given
// is printed as a cell to fill, never invented.

#include <optional>
#include <string>
#include <string_view>

#include "model/core/quantity.hpp"

namespace wrapgauge {

// A clinician who lets a device go all round chest, abdomen or head. All three are given.
struct Clearance {
  std::string name, role, date;  // date: "2026-11-29"
  bool operator==(const Clearance&) const = default;
};

// Someone's word that the body has no bony or nerve sites under the device.
struct SitesConfirmed {
  std::string who, when, why;
  bool operator==(const SitesConfirmed&) const = default;
};

enum class WearerPosture { kLying, kSitting, kStanding, kMoving };

std::string_view wearer_posture_name(WearerPosture posture);  // as plans write it: "sitting"
std::optional<WearerPosture> wearer_posture_from_name(std::string_view name);

struct Wearers {
  std::string population;     // "healthy adults"; empty: not given, as in all below
  std::optional<int> number;  // how many take part
  std::optional<WearerPosture> posture;
  std::optional<Length> above_heart;      // of the limb; negative: below
  std::string watched_by, how_they_tell;  // who watches, and how a wearer says that it hurts
  bool operator==(const Wearers&) const = default;

  int missing() const;  // of the six
};

}  // namespace wrapgauge
