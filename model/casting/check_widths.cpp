#include <algorithm>

#include "model/casting/casting_check_parts.hpp"
#include "model/casting/free_circle.hpp"
#include "model/casting/open_edges.hpp"

namespace wrapgauge {
namespace {

// Of a number as given: nothing but the last digits of its binary form is forgiven.
bool below(double given, double least) {
  return given < least * (1.0 - 1e-9);
}

void check_sheet(const CastingCheck& check, const Phrase& name, const Sheet& sheet) {
  const double least_m = 1e-3 * check.rules.value(CastingRule::kSheetLeast);
  if (!below(sheet.thickness.si(), least_m)) return;
  const auto [thickness, least] = lengths_told_apart(sheet.thickness.si(), least_m);
  check.findings.push_back(
      {CastingRule::kSheetLeast,
       Phrase::worded("%1 is %2 thick, less than %3: cast it thicker, or expect holes and tears.",
                      {name, thickness, least}),
       sheet.thickness / mm,
       1e3 * least_m,
       std::nullopt,
       {}});
}

Vec2 middle_of_path(const Polyline& path) {
  return 0.5 * (path[(path.size() - 1) / 2] + path[path.size() / 2]);
}

void add_neck(const CastingCheck& check, int chamber, const ClosestPlaces& neck) {
  const auto [width, least] = lengths_told_apart(neck.distance_m, check.least_strip_m());
  const Vec2 middle = 0.5 * (neck.on_first + neck.on_second);
  check.add_length(check.strip_rule(),
                   Phrase::worded("%1 has a neck of %2 at %3, less than the %4 below which it may fuse shut: "
                                  "widen it, or draw two chambers.",
                                  {part_phrase(check.layout, {RegionKind::kChamber, chamber}), width,
                                   place_phrase(middle), least}),
                   neck.distance_m, check.least_strip_m(), middle, {{ProblemPlace::Kind::kChamber, chamber}});
}

void add_narrow_chamber(const CastingCheck& check, int chamber, const FreeCircle& widest, double least_m) {
  const auto [width, least] = lengths_told_apart(2.0 * widest.radius_m, least_m);
  check.add_length(
      CastingRule::kChamberLeast,
      Phrase::worded("%1 is nowhere wider than %2, which is at %3 and less than %4 times the thicker sheet "
                     "(%5), so it hardly opens: widen it, or cast thinner sheets.",
                     {part_phrase(check.layout, {RegionKind::kChamber, chamber}), width,
                      place_phrase(widest.centre_m), check.figure(CastingRule::kChamberLeast), least}),
      2.0 * widest.radius_m, least_m, widest.centre_m, {{ProblemPlace::Kind::kChamber, chamber}});
}

void add_wide_chamber(const CastingCheck& check, int chamber, const FreeCircle& widest, double most_m) {
  const auto [width, most] = lengths_told_apart(2.0 * widest.radius_m, most_m);
  check.add_length(
      CastingRule::kChamberMost,
      Phrase::worded("%1 has no seam within a circle of %2 round %3, more than %4 times the thinner sheet "
                     "(%5), so it balloons there first: put inset seams into it, or divide it.",
                     {part_phrase(check.layout, {RegionKind::kChamber, chamber}), width,
                      place_phrase(widest.centre_m), check.figure(CastingRule::kChamberMost), most}),
      2.0 * widest.radius_m, most_m, widest.centre_m, {{ProblemPlace::Kind::kChamber, chamber}});
}

}  // namespace

CastingRule CastingCheck::strip_rule() const {
  const double by_thickness = rules.value(CastingRule::kChannelLeastThick) * thicker_m();
  return by_thickness <= 1e-3 * rules.value(CastingRule::kChannelLeast) ? CastingRule::kChannelLeast
                                                                        : CastingRule::kChannelLeastThick;
}

double CastingCheck::least_strip_m() const {
  return std::max(1e-3 * rules.value(CastingRule::kChannelLeast),
                  rules.value(CastingRule::kChannelLeastThick) * thicker_m());
}

void check_sheets(const CastingCheck& check) {
  check_sheet(check, Phrase::worded("the skin sheet"), check.layout.skin_sheet);
  check_sheet(check, Phrase::worded("the outer sheet"), check.layout.outer_sheet);
}

void check_channel_widths(const CastingCheck& check) {
  const double least_m = check.least_strip_m();
  const double most_m = check.rules.value(CastingRule::kChannelMost) * check.thinner_m();
  for (int i = 0; i < static_cast<int>(check.layout.channels.size()); ++i) {
    const Channel& channel = check.layout.channels[i];
    const double width_m = channel.width.si();
    const bool narrow = below(width_m, least_m);
    if (!narrow && !below(most_m, width_m)) continue;
    const double threshold_m = narrow ? least_m : most_m;
    const auto [width, threshold] = lengths_told_apart(width_m, threshold_m);
    const Vec2 middle = middle_of_path(channel.path_m);
    const std::vector<Phrase> values{part_phrase(check.layout, {RegionKind::kChannel, i}), width,
                                     place_phrase(middle), threshold};
    check.add_length(
        narrow ? check.strip_rule() : CastingRule::kChannelMost,
        narrow
            ? Phrase::worded("%1 is %2 wide at %3, less than the %4 below which it may fuse shut: widen it.",
                             values)
            : Phrase::worded("%1 is %2 wide at %3, more than the %4 above which it balloons like a chamber: "
                             "make it narrower, or two of it.",
                             values),
        width_m, threshold_m, middle, {{ProblemPlace::Kind::kChannel, i}});
  }
}

void check_chamber_widths(const CastingCheck& check) {
  const double least_m = check.rules.value(CastingRule::kChamberLeast) * check.thicker_m();
  const double most_m = check.rules.value(CastingRule::kChamberMost) * check.thinner_m();
  for (int i = 0; i < static_cast<int>(check.shapes.chambers.size()); ++i) {
    const auto& [wall, insets] = check.shapes.chambers[i];
    const FreeCircle widest = largest_free_circle(wall, insets);
    if (falls_short(2.0 * widest.radius_m, least_m)) {
      add_narrow_chamber(check, i, widest, least_m);
      continue;  // its necks are the same fault
    }
    if (falls_short(most_m, 2.0 * widest.radius_m)) add_wide_chamber(check, i, widest, most_m);
    for (const ClosestPlaces& neck : narrow_necks(wall, check.least_strip_m())) add_neck(check, i, neck);
  }
}

}  // namespace wrapgauge
