#pragma once
// The parts of a layout as a list, each to point at.

#include <cstddef>
#include <vector>

#include "model/core/phrase.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

struct LayoutPart {
  enum class Kind { kOutline, kChamber, kInsetSpot, kInsetLine, kChannel, kInlet, kStrap };
  Kind kind = Kind::kOutline;
  std::size_t index = 0;  // chamber, channel, inlet or strap
  std::size_t inset = 0;  // spot or line of that chamber

  bool operator==(const LayoutPart&) const = default;
};

// Outline first, each chamber followed by its inset seams, then channels, inlets and straps.
std::vector<LayoutPart> layout_parts(const Layout& layout);
Phrase part_title(const Layout& layout, const LayoutPart& part);  // "inset spot 2 of left back"

}  // namespace wrapgauge
