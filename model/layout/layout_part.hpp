#pragma once
// One part of a layout, to point at.

#include <cstddef>

namespace wrapgauge {

struct LayoutPart {
  enum class Kind { kOutline, kChamber, kInsetSpot, kInsetLine, kChannel, kInlet, kStrap };
  Kind kind = Kind::kOutline;
  std::size_t index = 0;  // chamber, channel, inlet or strap
  std::size_t inset = 0;  // spot or line of that chamber

  bool operator==(const LayoutPart&) const = default;
};

}  // namespace wrapgauge
