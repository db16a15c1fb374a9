#include "model/layout/layout_part.hpp"

namespace wrapgauge {
namespace {

using Kind = LayoutPart::Kind;

}  // namespace

std::vector<LayoutPart> layout_parts(const Layout& layout) {
  std::vector<LayoutPart> parts{{Kind::kOutline, 0, 0}};
  for (std::size_t c = 0; c < layout.chambers.size(); ++c) {
    parts.push_back({Kind::kChamber, c, 0});
    for (std::size_t i = 0; i < layout.chambers[c].inset_spots.size(); ++i)
      parts.push_back({Kind::kInsetSpot, c, i});
    for (std::size_t i = 0; i < layout.chambers[c].inset_lines.size(); ++i)
      parts.push_back({Kind::kInsetLine, c, i});
  }
  for (std::size_t i = 0; i < layout.channels.size(); ++i) parts.push_back({Kind::kChannel, i, 0});
  for (std::size_t i = 0; i < layout.inlets.size(); ++i) parts.push_back({Kind::kInlet, i, 0});
  for (std::size_t i = 0; i < layout.straps.size(); ++i) parts.push_back({Kind::kStrap, i, 0});
  return parts;
}

Phrase part_title(const Layout& layout, const LayoutPart& part) {
  const Phrase inset_number = figures_of(static_cast<int>(part.inset) + 1);
  const auto chamber = [&] { return name_of(layout.chambers[part.index].name); };
  switch (part.kind) {
    case Kind::kOutline:
      return Phrase::worded("outline");
    case Kind::kChamber:
      return Phrase::worded("chamber %1", {chamber()});
    case Kind::kInsetSpot:
      return Phrase::worded("inset spot %1 of %2", {inset_number, chamber()});
    case Kind::kInsetLine:
      return Phrase::worded("inset line %1 of %2", {inset_number, chamber()});
    case Kind::kChannel:
      return Phrase::worded("channel %1", {name_of(layout.channels[part.index].name)});
    case Kind::kInlet:
      return Phrase::worded("inlet %1", {name_of(layout.inlets[part.index].name)});
    case Kind::kStrap:
      break;
  }
  return Phrase::worded("strap %1", {name_of(layout.straps[part.index].name)});
}

}  // namespace wrapgauge
