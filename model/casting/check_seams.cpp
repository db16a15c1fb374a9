#include <algorithm>

#include "model/casting/casting_check_parts.hpp"
#include "model/core/number_text.hpp"
#include "model/geometry/polygon_checks.hpp"
#include "model/layout/air_groups.hpp"

namespace wrapgauge {
namespace {

struct OpenLoop {
  const Polygon* loop;
  FlatRegion region;
  ProblemPlace place;
};

std::vector<OpenLoop> open_loops(const CastingCheck& check) {
  std::vector<OpenLoop> loops;
  for (int i = 0; i < static_cast<int>(check.shapes.chambers.size()); ++i)
    loops.push_back(
        {&check.shapes.chambers[i].boundary_m, {RegionKind::kChamber, i}, {ProblemPlace::Kind::kChamber, i}});
  for (int i = 0; i < static_cast<int>(check.shapes.channels_m.size()); ++i)
    loops.push_back(
        {&check.shapes.channels_m[i], {RegionKind::kChannel, i}, {ProblemPlace::Kind::kChannel, i}});
  return loops;
}

void add_thin_seam(const CastingCheck& check, const std::string& between, const ClosestPlaces& gap,
                   double least_m, std::vector<ProblemPlace> parts) {
  check.findings.push_back({CastingRule::kSeamWidth,
                            "the seam between " + between + " is " + length_text(gap.distance_m) +
                                " wide at " + place_text(gap.on_first) + ", less than " +
                                number_text(check.rules.value(CastingRule::kSeamWidth)) +
                                " times the thicker sheet (" + length_text(least_m) +
                                "): move them apart, or cast thinner sheets.",
                            1e3 * gap.distance_m, 1e3 * least_m, gap.on_first, std::move(parts)});
}

// Two channels that end in one chamber near one another, or a channel along the rim, count too.
void check_pair(const CastingCheck& check, const OpenLoop& a, const OpenLoop& b, double least_m) {
  const ClosestPlaces gap = closest_places(*a.loop, *b.loop);
  if (gap.distance_m >= least_m || gap.distance_m < 1e-5) return;  // joined
  if (contains(*a.loop, b.loop->front()) || contains(*b.loop, a.loop->front())) return;
  add_thin_seam(check, part_name(check.layout, a.region) + " and " + part_name(check.layout, b.region), gap,
                least_m, {a.place, b.place});
}

std::string inset_name(const CastingCheck& check, int chamber, std::size_t k) {
  const std::size_t spots = check.layout.chambers[chamber].inset_spots.size();
  return (k < spots ? "inset spot " + std::to_string(k + 1) : "inset line " + std::to_string(k - spots + 1)) +
         " of " + part_name(check.layout, {RegionKind::kChamber, chamber});
}

void add_narrow_gap(const CastingCheck& check, int chamber, const std::string& between,
                    const ClosestPlaces& gap, double least_m) {
  check.findings.push_back({CastingRule::kInsetGap,
                            "the gap between " + between + " is " + length_text(gap.distance_m) + " at " +
                                place_text(gap.on_first) + ", less than " +
                                number_text(check.rules.value(CastingRule::kInsetGap)) +
                                " times the thicker sheet (" + length_text(least_m) +
                                "), so it can hardly open: move the inset seam, or make it smaller.",
                            1e3 * gap.distance_m,
                            1e3 * least_m,
                            gap.on_first,
                            {{ProblemPlace::Kind::kChamber, chamber}}});
}

}  // namespace

void check_seam_widths(const CastingCheck& check) {
  const double least_m = check.rules.value(CastingRule::kSeamWidth) * check.thicker_m();
  const std::vector<OpenLoop> loops = open_loops(check);
  for (std::size_t i = 0; i < loops.size(); ++i) {
    const OpenLoop& one = loops[i];
    if (one.region.kind == RegionKind::kChamber) {  // a channel may run up to the outline, to a tube there
      const ClosestPlaces rim = closest_places(*one.loop, check.shapes.outline_m);
      if (rim.distance_m < least_m)
        add_thin_seam(check, part_name(check.layout, one.region) + " and the outline", rim, least_m,
                      {one.place});
    }
    for (std::size_t j = i + 1; j < loops.size(); ++j) check_pair(check, one, loops[j], least_m);
  }
}

void check_inset_gaps(const CastingCheck& check) {
  const double least_m = check.rules.value(CastingRule::kInsetGap) * check.thicker_m();
  for (int i = 0; i < static_cast<int>(check.shapes.chambers.size()); ++i) {
    const auto& [wall, insets] = check.shapes.chambers[i];
    for (std::size_t k = 0; k < insets.size(); ++k) {
      const std::string name = inset_name(check, i, k);
      const ClosestPlaces to_wall = closest_places(insets[k], wall);
      if (to_wall.distance_m < least_m)
        add_narrow_gap(check, i, name + " and the chamber's wall", to_wall, least_m);
      for (std::size_t m = k + 1; m < insets.size(); ++m) {
        const ClosestPlaces gap = closest_places(insets[k], insets[m]);
        if (gap.distance_m < 1e-5 || gap.distance_m >= least_m) continue;  // drawn as one inset seam
        if (contains(insets[k], insets[m].front()) || contains(insets[m], insets[k].front())) continue;
        add_narrow_gap(check, i, name + " and " + inset_name(check, i, m), gap, least_m);
      }
    }
  }
}

void check_channel_widths(const CastingCheck& check) {
  const double by_thickness = check.rules.value(CastingRule::kChannelLeastThick) * check.thicker_m();
  const double least_m = std::max(1e-3 * check.rules.value(CastingRule::kChannelLeast), by_thickness);
  const double most_m = check.rules.value(CastingRule::kChannelMost) * check.thinner_m();
  for (int i = 0; i < static_cast<int>(check.layout.channels.size()); ++i) {
    const Channel& channel = check.layout.channels[i];
    const double width = channel.width.si();
    if (width >= least_m && width <= most_m) continue;
    const bool narrow = width < least_m;
    const Vec2 middle =
        0.5 * (channel.path_m[(channel.path_m.size() - 1) / 2] + channel.path_m[channel.path_m.size() / 2]);
    check.findings.push_back(
        {!narrow ? CastingRule::kChannelMost
                 : (1e3 * by_thickness <= check.rules.value(CastingRule::kChannelLeast)
                        ? CastingRule::kChannelLeast
                        : CastingRule::kChannelLeastThick),
         "channel '" + channel.name + "' is " + length_text(width) + " wide at " + place_text(middle) +
             (narrow ? ", less than the " + length_text(least_m) + " below which it may fuse shut: widen it."
                     : ", more than the " + length_text(most_m) +
                           " above which it balloons like a chamber: make it narrower, or two of it."),
         1e3 * width,
         1e3 * (narrow ? least_m : most_m),
         middle,
         {{ProblemPlace::Kind::kChannel, i}}});
  }
}

}  // namespace wrapgauge
