#include "model/casting/casting_words.hpp"

#include "model/core/number_text.hpp"

namespace wrapgauge {

Phrase part_phrase(const Layout& layout, const FlatRegion& region) {
  return region.kind == RegionKind::kChamber
             ? Phrase::worded("chamber '%1'", {name_of(layout.chambers[region.part].name)})
             : Phrase::worded("channel '%1'", {name_of(layout.channels[region.part].name)});
}

Phrase inset_phrase(const Layout& layout, int chamber, std::size_t k) {
  const std::size_t spots = layout.chambers[chamber].inset_spots.size();
  const Phrase name = name_of(layout.chambers[chamber].name);
  const auto count = [](std::size_t number) { return figures_of(static_cast<int>(number)); };
  return k < spots ? Phrase::worded("inset spot %1 of chamber '%2'", {count(k + 1), name})
                   : Phrase::worded("inset line %1 of chamber '%2'", {count(k - spots + 1), name});
}

Phrase place_phrase(const Vec2& point_m) {
  return Phrase::worded("(%1, %2) mm", {figures_of(fixed_text(1e3 * point_m.x(), 1)),
                                        figures_of(fixed_text(1e3 * point_m.y(), 1))});
}

Phrase length_phrase(double length_m) {
  return millimetres_of(Length(length_m));
}

bool exceeds(double figure, double most) {
  return figure > most * (1.0 + 1e-4);
}

ToldApart told_apart(double value, double threshold, const std::string& unit) {
  int decimals = 1;
  while (decimals < 4 && fixed_text(value, decimals) == fixed_text(threshold, decimals)) ++decimals;
  return {figures_of(fixed_text(value, decimals) + unit), figures_of(fixed_text(threshold, decimals) + unit)};
}

ToldApart lengths_told_apart(double length_m, double threshold_m) {
  return told_apart(1e3 * length_m, 1e3 * threshold_m, " mm");
}

}  // namespace wrapgauge
