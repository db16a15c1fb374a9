#include "model/limits/people.hpp"

#include <array>
#include <string_view>

namespace wrapgauge {
namespace {

constexpr std::array kPostures = {WearerPosture::kLying, WearerPosture::kSitting, WearerPosture::kStanding,
                                  WearerPosture::kMoving};

}  // namespace

std::string_view wearer_posture_name(WearerPosture posture) {
  if (posture == WearerPosture::kLying) return "lying";
  if (posture == WearerPosture::kSitting) return "sitting";
  return posture == WearerPosture::kStanding ? "standing" : "moving";
}

std::optional<WearerPosture> wearer_posture_from_name(std::string_view name) {
  for (const WearerPosture posture : kPostures)
    if (name == wearer_posture_name(posture)) return posture;
  return std::nullopt;
}

int Wearers::missing() const {
  return int(population.empty()) + int(!number) + int(!posture) + int(!above_heart) +
         int(watched_by.empty()) + int(how_they_tell.empty());
}

}  // namespace wrapgauge
