#include "model/limits/pressed_part.hpp"

#include <algorithm>
#include <optional>

namespace wrapgauge {
namespace {

// The part of a triangle's region; none on a seam.
std::optional<PressedPart> part_of(const Layout& layout, const FlatRegion& region) {
  const auto at = static_cast<std::size_t>(region.part);
  if (region.kind == RegionKind::kChamber && at < layout.chambers.size())
    return PressedPart{PressedKind::kChamber, layout.chambers[at].name};
  if (region.kind == RegionKind::kStrap && at < layout.straps.size())
    return PressedPart{PressedKind::kStrap, layout.straps[at].name};
  if (region.kind == RegionKind::kChannel && at < layout.channels.size())
    return PressedPart{PressedKind::kChannel, layout.channels[at].name};
  return std::nullopt;
}

template <class Parts>
bool holds(const Parts& parts, const std::string& name) {
  return std::any_of(parts.begin(), parts.end(), [&](const auto& part) { return part.name == name; });
}

}  // namespace

PressedPart part_under(const InflationSetup& setup, int vertex) {
  std::optional<PressedPart> best;
  for (std::size_t t = 0; t < setup.flat.regions.size(); ++t) {
    if ((setup.flat.triangles.row(static_cast<Eigen::Index>(t)).array() != vertex).all()) continue;
    const auto part = part_of(setup.layout, setup.flat.regions[t]);
    if (part && (!best || part->kind < best->kind)) best = part;
  }
  return best.value_or(PressedPart{PressedKind::kSeam, "seam"});
}

PressedPart part_called(const Layout& layout, const Phrase& peak_part) {
  const std::string name = english(peak_part);
  if (peak_part.kind != Phrase::Kind::kName) return {PressedKind::kSeam, "seam"};
  if (holds(layout.chambers, name)) return {PressedKind::kChamber, name};
  return {holds(layout.straps, name) ? PressedKind::kStrap : PressedKind::kChannel, name};
}

Phrase as_place(const PressedPart& part) {
  return part.kind == PressedKind::kSeam ? Phrase::worded("seam") : name_of(part.name);
}

Phrase as_subject(const PressedPart& part) {
  switch (part.kind) {
    case PressedKind::kChamber:
      return Phrase::worded("Chamber '%1'", {name_of(part.name)});
    case PressedKind::kStrap:
      return Phrase::worded("Strap '%1'", {name_of(part.name)});
    case PressedKind::kChannel:
      return Phrase::worded("Channel '%1'", {name_of(part.name)});
    case PressedKind::kSeam:
      break;
  }
  return Phrase::worded("A seam");
}

Phrase amid(const PressedPart& part) {
  switch (part.kind) {
    case PressedKind::kChamber:
      return Phrase::worded("chamber '%1'", {name_of(part.name)});
    case PressedKind::kStrap:
      return Phrase::worded("strap '%1'", {name_of(part.name)});
    case PressedKind::kChannel:
      return Phrase::worded("channel '%1'", {name_of(part.name)});
    case PressedKind::kSeam:
      break;
  }
  return Phrase::worded("a seam");
}

Phrase to_move(PressedKind kind) {
  switch (kind) {
    case PressedKind::kChamber:
      return Phrase::worded("the chamber");
    case PressedKind::kStrap:
      return Phrase::worded("the strap");
    case PressedKind::kChannel:
      return Phrase::worded("the channel");
    case PressedKind::kSeam:
      break;
  }
  return Phrase::worded("the seam");
}

}  // namespace wrapgauge
