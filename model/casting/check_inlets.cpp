#include "model/casting/casting_check_parts.hpp"
#include "model/layout/air_groups.hpp"

namespace wrapgauge {
namespace {

double least_to_weld_m(const CastingCheck& check) {
  return 1e-3 * check.rules.value(CastingRule::kInletToSeam);
}

void add_on_weld(const CastingCheck& check, int inlet, Phrase weld) {
  const Inlet& one = check.layout.inlets[inlet];
  const double least_m = least_to_weld_m(check);
  check.add_length(
      CastingRule::kInletToSeam,
      Phrase::worded("inlet '%1' at %2 lies on %3, where the sheets are fused: move it into the "
                     "open, %4 or more from every seam.",
                     {name_of(one.name), place_phrase(one.point_m), std::move(weld), length_phrase(least_m)}),
      0.0, least_m, one.point_m, {{ProblemPlace::Kind::kInlet, inlet}});
}

void add_near_weld(const CastingCheck& check, int inlet, double distance_m, Phrase weld) {
  const Inlet& one = check.layout.inlets[inlet];
  const double least_m = least_to_weld_m(check);
  const auto [distance, least] = lengths_told_apart(distance_m, least_m);
  check.add_length(
      CastingRule::kInletToSeam,
      Phrase::worded("inlet '%1' at %2 is %3 from %4, less than %5: move it inwards, or the flange of its "
                     "tube peels the seam.",
                     {name_of(one.name), place_phrase(one.point_m), distance, std::move(weld), least}),
      distance_m, least_m, one.point_m, {{ProblemPlace::Kind::kInlet, inlet}});
}

void check_inlet_in_chamber(const CastingCheck& check, int inlet, int chamber) {
  const double least_m = least_to_weld_m(check);
  const Vec2& point = check.layout.inlets[inlet].point_m;
  const auto& [wall, insets] = check.shapes.chambers[chamber];
  if (!contains(wall, point)) {
    const Phrase name = part_phrase(check.layout, {RegionKind::kChamber, chamber});
    add_on_weld(check, inlet, Phrase::worded("the seam round %1", {name}));
    return;
  }
  double nearest = distance_to_loop_m(wall, point);
  Phrase weld = Phrase::worded("the chamber's wall");
  for (std::size_t k = 0; k < insets.size(); ++k) {
    if (contains(insets[k], point)) {
      add_on_weld(check, inlet, inset_phrase(check.layout, chamber, k));
      return;
    }
    const double gap = distance_to_loop_m(insets[k], point);
    if (gap >= nearest) continue;
    nearest = gap;
    weld = inset_phrase(check.layout, chamber, k);
  }
  if (falls_short(nearest, least_m)) add_near_weld(check, inlet, nearest, std::move(weld));
}

// A tube laid in a channel is held by it; beside the channel it is not.
void check_inlet_in_channel(const CastingCheck& check, int inlet, int channel) {
  const Vec2& point = check.layout.inlets[inlet].point_m;
  const Polygon& edge = check.shapes.channels_m[channel];
  if (contains(edge, point) || distance_to_loop_m(edge, point) <= kDrawingTolerance) return;
  const Phrase name = part_phrase(check.layout, {RegionKind::kChannel, channel});
  add_on_weld(check, inlet, Phrase::worded("the seam beside %1", {name}));
}

}  // namespace

void check_inlets(const CastingCheck& check) {
  for (int i = 0; i < static_cast<int>(check.layout.inlets.size()); ++i) {
    const auto fed = region_fed_by(check.shapes, check.layout.inlets[i].point_m);
    if (!fed) continue;
    if (fed->kind == RegionKind::kChamber)
      check_inlet_in_chamber(check, i, fed->part);
    else
      check_inlet_in_channel(check, i, fed->part);
  }
}

}  // namespace wrapgauge
