#include <algorithm>

#include "model/casting/casting_check_parts.hpp"
#include "model/core/number_text.hpp"
#include "model/geometry/polygon_checks.hpp"

namespace wrapgauge {
namespace {

void add_thin_seam(const CastingCheck& check, const std::string& between, const ClosestPlaces& gap,
                   double least_m, std::vector<ProblemPlace> parts) {
  check.findings.push_back({CastingRule::kSeamWidth,
                            "the seam between " + between + " is " + in_millimetres(gap.distance_m) +
                                " wide at " + at_mm(gap.on_first) + ", less than " +
                                number_text(check.rules.value(CastingRule::kSeamWidth)) +
                                " times the thicker sheet (" + in_millimetres(least_m) +
                                "): move them apart, or cast thinner sheets.",
                            1e3 * gap.distance_m, 1e3 * least_m, gap.on_first, std::move(parts)});
}

// Two channels that end in one chamber near one another, or a channel along the rim, count too.
void check_pair(const CastingCheck& check, const OpenLoop& a, const OpenLoop& b, double least_m) {
  const auto in_hole = seam_in_hole(check.shapes, a, b);
  const ClosestPlaces gap = in_hole ? *in_hole : closest_places(*a.loop, *b.loop);
  if (gap.distance_m >= least_m || gap.distance_m < 1e-5) return;  // joined
  if (!in_hole && (contains(*a.loop, b.loop->front()) || contains(*b.loop, a.loop->front()))) return;
  add_thin_seam(check, part_name(check.layout, a.region) + " and " + part_name(check.layout, b.region), gap,
                least_m, {a.place, b.place});
}

void add_narrow_gap(const CastingCheck& check, int chamber, const std::string& between,
                    const ClosestPlaces& gap, double least_m) {
  check.findings.push_back({CastingRule::kInsetGap,
                            "the gap between " + between + " is " + in_millimetres(gap.distance_m) + " at " +
                                at_mm(gap.on_first) + ", less than " +
                                number_text(check.rules.value(CastingRule::kInsetGap)) +
                                " times the thicker sheet (" + in_millimetres(least_m) +
                                "), so it can hardly open: move the inset seam, or make it smaller.",
                            1e3 * gap.distance_m,
                            1e3 * least_m,
                            gap.on_first,
                            {{ProblemPlace::Kind::kChamber, chamber}}});
}

}  // namespace

void check_seam_widths(const CastingCheck& check) {
  const double least_m = check.rules.value(CastingRule::kSeamWidth) * check.thicker_m();
  const std::vector<OpenLoop> loops = open_loops(check.shapes);
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
      const std::string name = inset_name(check.layout, i, k);
      const ClosestPlaces to_wall = closest_places(insets[k], wall);
      if (to_wall.distance_m < least_m)
        add_narrow_gap(check, i, name + " and the chamber's wall", to_wall, least_m);
      for (std::size_t m = k + 1; m < insets.size(); ++m) {
        const ClosestPlaces gap = closest_places(insets[k], insets[m]);
        if (gap.distance_m < 1e-5 || gap.distance_m >= least_m) continue;  // drawn as one inset seam
        if (contains(insets[k], insets[m].front()) || contains(insets[m], insets[k].front())) continue;
        add_narrow_gap(check, i, name + " and " + inset_name(check.layout, i, m), gap, least_m);
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
         "channel '" + channel.name + "' is " + in_millimetres(width) + " wide at " + at_mm(middle) +
             (narrow
                  ? ", less than the " + in_millimetres(least_m) + " below which it may fuse shut: widen it."
                  : ", more than the " + in_millimetres(most_m) +
                        " above which it balloons like a chamber: make it narrower, or two of it."),
         1e3 * width,
         1e3 * (narrow ? least_m : most_m),
         middle,
         {{ProblemPlace::Kind::kChannel, i}}});
  }
}

}  // namespace wrapgauge
