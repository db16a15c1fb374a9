#include <algorithm>

#include "model/casting/casting_check_parts.hpp"
#include "model/casting/open_edges.hpp"
#include "model/geometry/polygon_checks.hpp"

namespace wrapgauge {
namespace {

ProblemPlace place_of(const FlatRegion& region) {
  return {region.kind == RegionKind::kChamber ? ProblemPlace::Kind::kChamber : ProblemPlace::Kind::kChannel,
          region.part};
}

Phrase between_words(const Layout& layout, const Weld& weld) {
  const Phrase first = part_phrase(layout, *weld.first);
  if (!weld.second) return Phrase::worded("the seam between %1 and the outline", {first});
  if (same(weld.first, weld.second)) return Phrase::worded("the seam between two places of %1", {first});
  return Phrase::worded("the seam between %1 and %2", {first, part_phrase(layout, *weld.second)});
}

void add_thin_seam(const CastingCheck& check, const Weld& weld, double least_m) {
  const auto [width, least] = lengths_told_apart(weld.gap.distance_m, least_m);
  std::vector<ProblemPlace> parts{place_of(*weld.first)};
  if (weld.second && !same(weld.first, weld.second)) parts.push_back(place_of(*weld.second));
  check.add_length(
      CastingRule::kSeamWidth,
      Phrase::worded("%1 is %2 wide at %3, less than %4 times the thicker sheet (%5): move them apart, or "
                     "cast thinner sheets.",
                     {between_words(check.layout, weld), width, place_phrase(weld.gap.on_first),
                      check.figure(CastingRule::kSeamWidth), least}),
      weld.gap.distance_m, least_m, weld.gap.on_first, std::move(parts));
}

// Where the tube of an inlet leaves, a channel may run up to the outline.
bool tube_leaves_at(const Layout& layout, const Weld& weld, double least_m) {
  if (weld.second || weld.first->kind != RegionKind::kChannel) return false;
  const double reach = 0.5 * layout.channels[weld.first->part].width.si() + least_m;
  return std::any_of(layout.inlets.begin(), layout.inlets.end(),
                     [&](const Inlet& inlet) { return (inlet.point_m - weld.gap.on_first).norm() < reach; });
}

void add_narrow_gap(const CastingCheck& check, int chamber, Phrase between, const ClosestPlaces& gap,
                    double least_m) {
  const auto [width, least] = lengths_told_apart(gap.distance_m, least_m);
  check.add_length(
      CastingRule::kInsetGap,
      Phrase::worded("the gap between %1 is %2 at %3, less than %4 times the thicker sheet (%5), so it can "
                     "hardly open: move the inset seam, or make it smaller.",
                     {std::move(between), width, place_phrase(gap.on_first),
                      check.figure(CastingRule::kInsetGap), least}),
      gap.distance_m, least_m, gap.on_first, {{ProblemPlace::Kind::kChamber, chamber}});
}

}  // namespace

void check_seam_widths(const CastingCheck& check) {
  const double least_m = check.rules.value(CastingRule::kSeamWidth) * check.thicker_m();
  const auto counts = [&](const Weld& weld) { return !tube_leaves_at(check.layout, weld, least_m); };
  for (const Weld& weld : narrow_welds(check.shapes, least_m, counts)) add_thin_seam(check, weld, least_m);
}

void check_inset_gaps(const CastingCheck& check) {
  const double least_m = check.rules.value(CastingRule::kInsetGap) * check.thicker_m();
  for (int i = 0; i < static_cast<int>(check.shapes.chambers.size()); ++i) {
    const auto& [wall, insets] = check.shapes.chambers[i];
    for (std::size_t k = 0; k < insets.size(); ++k) {
      const Phrase name = inset_phrase(check.layout, i, k);
      const ClosestPlaces to_wall = closest_places(insets[k], wall);
      if (falls_short(to_wall.distance_m, least_m))
        add_narrow_gap(check, i, Phrase::worded("%1 and the chamber's wall", {name}), to_wall, least_m);
      for (std::size_t m = k + 1; m < insets.size(); ++m) {
        const ClosestPlaces gap = closest_places(insets[k], insets[m]);
        if (gap.distance_m < kDrawingTolerance || !falls_short(gap.distance_m, least_m))
          continue;  // one seam
        if (contains(insets[k], insets[m].front()) || contains(insets[m], insets[k].front())) continue;
        add_narrow_gap(check, i, Phrase::worded("%1 and %2", {name, inset_phrase(check.layout, i, m)}), gap,
                       least_m);
      }
    }
  }
}

}  // namespace wrapgauge
