#pragma once
#include <QMetaType>
#include <cstddef>

namespace wrapgauge {

// One part of a layout that can be pointed at.
struct FlatPart {
  enum class Kind { kOutline, kChamber, kInsetSpot, kInsetLine, kChannel, kInlet, kStrap };
  Kind kind = Kind::kOutline;
  std::size_t index = 0;  // chamber, channel, inlet or strap
  std::size_t inset = 0;  // spot or line of that chamber

  bool operator==(const FlatPart&) const = default;
};

}  // namespace wrapgauge
