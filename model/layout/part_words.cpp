#include "model/layout/part_words.hpp"

#include <cctype>
#include <string_view>

#include "model/core/number_text.hpp"

namespace wrapgauge {

Phrase part_name(const Layout& layout, const FlatRegion& region) {
  switch (region.kind) {
    case RegionKind::kChamber:
      return Phrase::worded("chamber '%1'", {name_of(layout.chambers[region.part].name)});
    case RegionKind::kChannel:
      return Phrase::worded("channel '%1'", {name_of(layout.channels[region.part].name)});
    case RegionKind::kStrap:
      return Phrase::worded("strap '%1'", {name_of(layout.straps[region.part].name)});
    case RegionKind::kWeld:
      break;
  }
  return Phrase::worded("seam");
}

Phrase part_name_first(const Layout& layout, const FlatRegion& region) {
  switch (region.kind) {
    case RegionKind::kChamber:
      return Phrase::worded("Chamber '%1'", {name_of(layout.chambers[region.part].name)});
    case RegionKind::kChannel:
      return Phrase::worded("Channel '%1'", {name_of(layout.channels[region.part].name)});
    case RegionKind::kStrap:
      return Phrase::worded("Strap '%1'", {name_of(layout.straps[region.part].name)});
    case RegionKind::kWeld:
      break;
  }
  return Phrase::worded("Seam");
}

Phrase inset_name_first(const Layout& layout, int chamber, std::size_t k) {
  const Chamber& of = layout.chambers[chamber];
  const int spots = static_cast<int>(of.inset_spots.size()), number = static_cast<int>(k) + 1;
  if (number <= spots)
    return Phrase::worded("Inset spot %1 of chamber '%2'", {figures_of(number), name_of(of.name)});
  return Phrase::worded("Inset line %1 of chamber '%2'", {figures_of(number - spots), name_of(of.name)});
}

std::string inlet_label(const Inlet& inlet) {
  constexpr std::string_view kWord = "inlet";
  std::string begin = inlet.name.substr(0, kWord.size());
  for (char& c : begin) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return begin == kWord ? inlet.name : "inlet " + inlet.name;
}

std::string in_millimetres(double length_m) {
  return fixed_text(length_m / 1e-3, 1) + " mm";
}

Phrase at_mm(const Vec2& point_m) {
  return Phrase::worded("(%1, %2) mm", {figures_of(fixed_text(point_m.x() / 1e-3, 1)),
                                        figures_of(fixed_text(point_m.y() / 1e-3, 1))});
}

}  // namespace wrapgauge
