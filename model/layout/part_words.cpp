#include "model/layout/part_words.hpp"

#include "model/core/number_text.hpp"

namespace wrapgauge {

std::string part_name(const Layout& layout, const FlatRegion& region) {
  switch (region.kind) {
    case RegionKind::kChamber:
      return "chamber '" + layout.chambers[region.part].name + "'";
    case RegionKind::kChannel:
      return "channel '" + layout.channels[region.part].name + "'";
    case RegionKind::kStrap:
      return "strap '" + layout.straps[region.part].name + "'";
    case RegionKind::kWeld:
      break;
  }
  return "seam";
}

std::string inset_name(const Layout& layout, int chamber, std::size_t k) {
  const std::size_t spots = layout.chambers[chamber].inset_spots.size();
  return (k < spots ? "inset spot " + std::to_string(k + 1) : "inset line " + std::to_string(k - spots + 1)) +
         " of " + part_name(layout, {RegionKind::kChamber, chamber});
}

std::string capitalised(std::string words) {
  words[0] = static_cast<char>(words[0] - 'a' + 'A');
  return words;
}

std::string in_millimetres(double length_m) {
  return fixed_text(length_m / 1e-3, 1) + " mm";
}

std::string at_mm(const Vec2& point_m) {
  std::string text = "(";  // one piece after the other: a chain of + trips a false warning of the compiler
  text += fixed_text(point_m.x() / 1e-3, 1);
  text += ", ";
  text += fixed_text(point_m.y() / 1e-3, 1);
  return text += ") mm";
}

}  // namespace wrapgauge
