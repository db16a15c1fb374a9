#include "model/layout/flat_places.hpp"

namespace wrapgauge {

bool is_open(const FlatRegion& region) {
  return region.kind == RegionKind::kChamber || region.kind == RegionKind::kChannel;
}

std::optional<GroupId> group_of(const FlatMesh& flat, const FlatRegion& region) {
  if (!is_open(region)) return std::nullopt;
  const auto& groups = region.kind == RegionKind::kChamber ? flat.chamber_group : flat.channel_group;
  const auto part = static_cast<std::size_t>(region.part);
  return part < groups.size() ? std::optional(groups[part]) : std::nullopt;
}

Vec2 middle_of(const FlatMesh& flat, Eigen::Index triangle) {
  Vec2 sum = Vec2::Zero();
  for (int corner = 0; corner < 3; ++corner)
    sum += flat.vertices_m.row(flat.triangles(triangle, corner)).transpose();
  return sum / 3.0;
}

}  // namespace wrapgauge
