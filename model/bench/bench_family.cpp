#include "model/bench/bench_family.hpp"

#include <algorithm>

#include "model/geometry/polygon.hpp"

namespace wrapgauge {
namespace {

std::optional<GroupId> group_filled(const Reading& reading, const Layout& layout, const FlatMesh& flat) {
  if (reading.kind == ReadingKind::kFill) {
    for (std::size_t g = 0; g < flat.group_inlet.size(); ++g)
      if (layout.inlets[index_of(flat.group_inlet[g])].name == reading.where) return static_cast<GroupId>(g);
    return std::nullopt;
  }
  if (reading.all_inlets) return std::nullopt;
  const auto chamber = chamber_of_reading(reading, layout);
  if (!chamber) return std::nullopt;
  return flat.chamber_group[index_of(*chamber)];
}

BenchFamily family_of(const Reading& reading, const Layout& layout, const FlatMesh& flat) {
  BenchFamily family;
  family.group = group_filled(reading, layout, flat);
  family.by_volume = reading.kind == ReadingKind::kFill;
  if (reading.kind == ReadingKind::kBulge && reading.clamped) family.bedding = Bedding::kClamped;
  if (reading.kind == ReadingKind::kPlate) {
    family.bedding = Bedding::kPlate;
    family.gap = Length(reading.value(ReadingField::kGap));
  }
  if (reading.kind == ReadingKind::kContact) family.kind = BenchFamily::Kind::kLimb;
  if (reading.kind == ReadingKind::kClosure) {
    family.kind = BenchFamily::Kind::kFastened;
    family.fastened = Length(reading.value(ReadingField::kFastened));
    family.group.reset();
  }
  return family;
}

bool is_alike(const BenchFamily& a, const BenchFamily& b) {
  return a.kind == b.kind && a.bedding == b.bedding && a.by_volume == b.by_volume && a.group == b.group &&
         a.gap == b.gap && a.fastened == b.fastened;
}

double level_of(const Reading& reading) {
  return reading.value(reading.kind == ReadingKind::kFill ? ReadingField::kFilled : ReadingField::kGauge);
}

}  // namespace

std::vector<BenchFamily> bench_families(const std::vector<Reading>& rows, const Layout& layout,
                                        const FlatMesh& flat) {
  std::vector<BenchFamily> families;
  for (std::size_t row = 0; row < rows.size(); ++row) {
    const ReadingKind kind = rows[row].kind;
    if (kind == ReadingKind::kStrip || kind == ReadingKind::kPeel || kind == ReadingKind::kMap) continue;
    const BenchFamily one = family_of(rows[row], layout, flat);
    auto at = std::find_if(families.begin(), families.end(),
                           [&](const BenchFamily& family) { return is_alike(family, one); });
    if (at == families.end()) at = families.insert(families.end(), one);
    at->readings.push_back(row);
  }
  for (BenchFamily& family : families)
    std::stable_sort(family.readings.begin(), family.readings.end(),
                     [&](std::size_t a, std::size_t b) { return level_of(rows[a]) < level_of(rows[b]); });
  return families;
}

InflationWaypoint waypoint_of(const BenchFamily& family, const Reading& reading, const FlatMesh& flat,
                              const Plan& plan) {
  constexpr Volume kLeastDead = 0.1 * mL;  // the fitting alone
  InflationWaypoint waypoint;
  for (std::size_t g = 0; g < flat.group_inlet.size(); ++g) {
    const bool filled = !family.group || index_of(*family.group) == g;
    if (!filled || family.kind == BenchFamily::Kind::kFastened)
      waypoint.push_back(Pressure());
    else if (!family.by_volume)
      waypoint.push_back(Pressure(reading.value(ReadingField::kGauge)));
    else if (plan.filling.medium == Medium::kAir)
      waypoint.push_back(TrappedAir{Volume(reading.value(ReadingField::kFilled)),
                                    std::max(plan.supply.dead_volume, kLeastDead)});
    else
      waypoint.push_back(Volume(reading.value(ReadingField::kFilled)));
  }
  return waypoint;
}

std::optional<ChamberId> chamber_of_reading(const Reading& reading, const Layout& layout) {
  for (std::size_t c = 0; c < layout.chambers.size(); ++c) {
    const Chamber& chamber = layout.chambers[c];
    const bool at = reading.where.empty()
                        ? reading.has(ReadingField::kX) &&
                              contains(chamber.boundary_m,
                                       {reading.value(ReadingField::kX), reading.value(ReadingField::kY)})
                        : chamber.name == reading.where;
    if (at) return static_cast<ChamberId>(c);
  }
  return std::nullopt;
}

}  // namespace wrapgauge
