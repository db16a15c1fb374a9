#include "model/layout/layout_check_parts.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "model/core/number_text.hpp"
#include "model/geometry/polygon_checks.hpp"
#include "model/layout/air_groups.hpp"
#include "model/layout/part_words.hpp"

namespace wrapgauge {
namespace {

constexpr double kTouching =
    1e-9;  // m2: an overlap smaller than a thousandth of a square millimetre is rounding
constexpr double kStrapContact = 1e-3;  // m of shared edge that a strap needs at least

bool boxes_within(const Polygon& a, const Polygon& b, double gap) {
  const Bounds2 box_a = bounds(a), box_b = bounds(b);
  return ((box_a.low.array() - gap) <= box_b.high.array()).all() &&
         ((box_b.low.array() - gap) <= box_a.high.array()).all();
}

// "3.1 mm"; a length just short of the least shows so many digits that it is seen to be short.
Phrase short_of(double length_m, double least_m) {
  int digits = 1;
  while (digits < 4 && fixed_text(length_m / 1e-3, digits) == fixed_text(least_m / 1e-3, digits)) ++digits;
  return millimetres_of(Length(length_m), digits);
}

void report_thin_seam(const LayoutCheck& check, const Phrase& between, const ClosestPlaces& places,
                      std::vector<ProblemPlace> marks) {
  const double least_m = thicker_sheet_m(check.layout);
  check.add(
      Phrase::worded("The seam between %1 is %2 wide at %3, less than the thicker sheet (%4); move them "
                     "apart or use thinner sheets.",
                     {between, short_of(places.distance_m, least_m), at_mm(places.on_first),
                      millimetres_of(Length(least_m))}),
      std::move(marks));
}

void check_pair(const LayoutCheck& check, const OpenLoop& a, const OpenLoop& b) {
  const double thickness = thicker_sheet_m(check.layout);
  if (!boxes_within(*a.loop, *b.loop, thickness)) return;
  const bool chambers = a.region.kind == RegionKind::kChamber && b.region.kind == RegionKind::kChamber;
  const auto both = [&] {
    return Phrase::worded("%1 and %2",
                          {part_name(check.layout, a.region), part_name(check.layout, b.region)});
  };
  if (const auto seam = seam_in_hole(check.shapes, a, b)) {
    if (falls_short(seam->distance_m, thickness)) report_thin_seam(check, both(), *seam, {a.place, b.place});
    return;
  }
  const double common = common_area_m2(*a.loop, *b.loop);
  if (common > kTouching) {
    if (chambers)
      check.add(Phrase::worded("%1 and %2 overlap by %3 mm2; move them apart, or draw them as one chamber.",
                               {part_name_first(check.layout, a.region), part_name(check.layout, b.region),
                                figures_of(fixed_text(common / 1e-6, 1))}),
                {a.place, b.place});
    return;  // a channel that overlaps a chamber or channel joins it
  }
  const ClosestPlaces places = closest_places(*a.loop, *b.loop);
  const bool joined = !chambers && places.distance_m < kDrawingTolerance;
  if (falls_short(places.distance_m, thickness) && !joined)
    report_thin_seam(check, both(), places, {a.place, b.place});
}

void check_against_outline(const LayoutCheck& check, const OpenLoop& part) {
  if (const auto outside = farthest_outside(*part.loop, check.shapes.outline_m)) {
    check.add(Phrase::worded("%1 leaves the outline by %2 at %3; move it inside, or make the outline larger.",
                             {part_name_first(check.layout, part.region),
                              millimetres_of(Length(outside->distance_m)), at_mm(outside->point)}),
              {part.place});
    return;
  }
  if (part.region.kind == RegionKind::kChannel) return;  // may run up to the outline, to an inlet there
  const ClosestPlaces places = closest_places(*part.loop, check.shapes.outline_m);
  if (falls_short(places.distance_m, thicker_sheet_m(check.layout)))
    report_thin_seam(check, Phrase::worded("%1 and the outline", {part_name(check.layout, part.region)}),
                     places, {part.place});
}

// What each open part touches: other open parts through shared edges, and inlets.
std::vector<int> ends_of_channels(const LayoutCheck& check) {
  std::vector<std::set<std::pair<int, int>>> touched(check.layout.channels.size());
  const auto note = [&](const FlatRegion& channel, const FlatRegion& other) {
    if (channel.kind == RegionKind::kChannel)
      touched[channel.part].insert({static_cast<int>(other.kind), other.part});
  };
  for (const auto& [a, b] : check.lines.sides)
    if (a && b && is_open(*a) && is_open(*b)) {
      note(*a, *b);
      note(*b, *a);
    }
  std::vector<int> ends;
  for (const auto& set : touched) ends.push_back(static_cast<int>(set.size()));
  for (const Inlet& inlet : check.layout.inlets)
    if (const auto region = region_fed_by(check.shapes, inlet.point_m))
      if (region->kind == RegionKind::kChannel) ++ends[region->part];
  return ends;
}

}  // namespace

void check_open_regions(const LayoutCheck& check) {
  const std::vector<OpenLoop> parts = open_loops(check.shapes);
  for (std::size_t i = 0; i < parts.size(); ++i) {
    check_against_outline(check, parts[i]);
    for (std::size_t j = i + 1; j < parts.size(); ++j) check_pair(check, parts[i], parts[j]);
  }
}

void check_insets(const LayoutCheck& check) {
  const double thickness = thicker_sheet_m(check.layout);
  for (int i = 0; i < static_cast<int>(check.layout.chambers.size()); ++i) {
    const auto& [wall, insets] = check.shapes.chambers[i];
    for (std::size_t k = 0; k < insets.size(); ++k) {
      const ProblemPlace place{ProblemPlace::Kind::kChamber, i};
      const Phrase what = inset_name_first(check.layout, i, k);
      if (const auto outside = farthest_outside(insets[k], wall)) {
        check.add(Phrase::worded("%1 reaches %2 outside its chamber at %3; move it inside.",
                                 {what, millimetres_of(Length(outside->distance_m)), at_mm(outside->point)}),
                  {place});
        continue;
      }
      const ClosestPlaces gap = closest_places(insets[k], wall);
      if (falls_short(gap.distance_m, thickness))
        check.add(
            Phrase::worded("%1 is %2 from the chamber's wall at %3, less than the thicker sheet (%4), so "
                           "the gap cannot open; move it inwards.",
                           {what, short_of(gap.distance_m, thickness), at_mm(gap.on_first),
                            millimetres_of(Length(thickness))}),
            {place});
    }
  }
}

void check_air(const LayoutCheck& check) {
  const AirGroups groups = air_groups(check.layout, check.shapes, check.lines.sides);
  FedGroups fed = feed_groups(check.layout, check.shapes, groups);
  for (Problem& problem : fed.problems) check.problems.push_back(std::move(problem));
  const std::vector<int> ends = ends_of_channels(check);
  for (int i = 0; i < static_cast<int>(ends.size()); ++i) {
    const GroupId group = groups.channel_group[static_cast<std::size_t>(i)];
    // An inlet that feeds channels alone is told by its own name.
    if (ends[i] >= 2 || (fed.fed_by[index_of(group)] && !has_chamber(groups, group))) continue;
    const Polyline& path = check.layout.channels[i].path_m;
    const std::vector<Phrase> values{name_of(check.layout.channels[i].name), at_mm(path.front()),
                                     at_mm(path.back())};
    check.add(
        ends[i] == 0
            ? Phrase::worded("Channel '%1' from %2 to %3 joins nothing; lengthen it into two chambers or "
                             "to an inlet, or remove it.",
                             values)
            : Phrase::worded("Channel '%1' from %2 to %3 joins only one part and no inlet; lengthen it "
                             "into two chambers or to an inlet, or remove it.",
                             values),
        {{ProblemPlace::Kind::kChannel, i}});
  }
}

void check_straps(const LayoutCheck& check) {
  if (check.layout.straps.empty()) return;
  std::vector<double> shared(check.layout.straps.size(), 0.0);
  const auto& [graph, sides] = check.lines;
  for (std::size_t s = 0; s < sides.size(); ++s)
    for (int side = 0; side < 2; ++side) {
      const auto &one = sides[s][side], &other = sides[s][1 - side];
      if (!one || !other || one->kind != RegionKind::kStrap || other->kind == RegionKind::kStrap) continue;
      const auto [from, to] = graph.segments[s];
      shared[one->part] += (graph.points_m[from] - graph.points_m[to]).norm();
    }
  for (int i = 0; i < static_cast<int>(shared.size()); ++i) {
    if (shared[i] >= kStrapContact) continue;
    const double gap = closest_places(check.shapes.straps_m[i], check.shapes.outline_m).distance_m;
    check.add(
        Phrase::worded("Strap '%1' shares no edge with the outline (%2 away); draw it so that they share "
                       "an edge of at least 1 mm.",
                       {name_of(check.layout.straps[i].name), millimetres_of(Length(gap))}),
        {{ProblemPlace::Kind::kStrap, i}});
  }
}

void check_closure(const LayoutCheck& check) {
  const auto& closure = check.layout.closure;
  if (!closure) return;
  if (!std::isfinite(closure->from_x_m) || !std::isfinite(closure->taper) || !std::isfinite(closure->bend) ||
      closure->closing_length.has_value() == closure->stretch.has_value()) {
    check.add(
        Phrase::worded("The closure needs exactly one of closing length and stretch, and a finite start."));
    return;
  }
  if (closure->stretch && !(*closure->stretch > -0.5 && *closure->stretch < 2.0)) {
    check.add(Phrase::worded("The closing stretch is %1; it should lie between -0.5 and 2.",
                             {figures_of(number_text(*closure->stretch))}));
    return;
  }
  if (std::abs(closure->taper) > kSteepestTaper) {
    check.add(Phrase::worded(
        "The closing length grows by %1 mm for each mm towards proximal; it should lie between -2 and 2.",
        {figures_of(number_text(closure->taper))}));
    return;
  }
  if (std::abs(closure->bend) > kSteepestTaper) {
    check.add(Phrase::worded(
        "The closing lines bend by %1 mm for each mm along the limb; it should lie between -2 and 2.",
        {figures_of(number_text(closure->bend))}));
    return;
  }
  const Bounds2 box = bounds(check.shapes.outline_m);
  // With a stretch the closing length is known only on a body: half the layout stands in to check the start.
  const Length length = closure->closing_length.value_or(0.5 * Length(box.high.x() - closure->from_x_m));
  const auto window = closing_window(check.layout, length);
  if (!window) {
    check.problems.push_back(window.problem());
  } else if (*window && closure->closing_length) {
    if (auto problem = cut_open_region(check.layout, check.shapes, **window))
      check.problems.push_back(*problem);
  }
}

}  // namespace wrapgauge
