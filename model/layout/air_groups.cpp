#include "model/layout/air_groups.hpp"

#include <numeric>

#include "model/layout/region_map.hpp"

namespace wrapgauge {
namespace {

constexpr double kInletReach = 1e-3;  // an inlet drawn on a chamber's edge still feeds it

// Open regions as numbers: chambers first, then channels.
class OpenRegions {
 public:
  explicit OpenRegions(const LayoutShapes& shapes)
      : chambers_(static_cast<int>(shapes.chambers.size())),
        parent_(shapes.chambers.size() + shapes.channels_m.size()) {
    std::iota(parent_.begin(), parent_.end(), 0);
  }
  int number(const FlatRegion& region) const {
    return region.kind == RegionKind::kChamber ? region.part : chambers_ + region.part;
  }
  int root(int i) const {
    while (parent_[i] != i) i = parent_[i];
    return i;
  }
  void join(int a, int b) {
    const int ra = root(a), rb = root(b);
    parent_[std::max(ra, rb)] = std::min(ra, rb);
  }
  int count() const { return static_cast<int>(parent_.size()); }

 private:
  int chambers_;
  std::vector<int> parent_;
};

void join_across_edges(const FlatMesh& mesh, OpenRegions& open) {
  std::vector<std::array<int, 3>> triangles;
  for (Eigen::Index t = 0; t < mesh.triangles.rows(); ++t)
    triangles.push_back({mesh.triangles(t, 0), mesh.triangles(t, 1), mesh.triangles(t, 2)});
  for (const EdgeSides& edge : edge_sides(triangles)) {
    if (edge.triangles[1] < 0) continue;
    const FlatRegion &a = mesh.regions[edge.triangles[0]], &b = mesh.regions[edge.triangles[1]];
    if (is_open(a) && is_open(b)) open.join(open.number(a), open.number(b));
  }
}

// Channels that no triangle belongs to, because chambers or other channels cover them.
void join_covered_channels(const Layout& layout, const LayoutShapes& shapes, const FlatMesh& mesh,
                           OpenRegions& open) {
  std::vector<bool> meshed(layout.channels.size(), false);
  for (const FlatRegion& region : mesh.regions)
    if (region.kind == RegionKind::kChannel) meshed[region.part] = true;
  for (std::size_t i = 0; i < meshed.size(); ++i) {
    if (meshed[i]) continue;
    for (const Vec2& p : layout.channels[i].path_m)
      if (const auto region = region_at(shapes, p); region && is_open(*region))
        open.join(open.number({RegionKind::kChannel, static_cast<int>(i)}), open.number(*region));
  }
}

std::string part_name(const Layout& layout, const FlatRegion& region) {
  return region.kind == RegionKind::kChamber ? "chamber '" + layout.chambers[region.part].name + "'"
                                             : "channel '" + layout.channels[region.part].name + "'";
}

std::optional<Problem> feed_groups(const Layout& layout, const LayoutShapes& shapes, FlatMesh& mesh,
                                   int groups) {
  std::vector<std::optional<InletId>> fed_by(groups);
  for (std::size_t i = 0; i < layout.inlets.size(); ++i) {
    const Inlet& inlet = layout.inlets[i];
    const auto region = region_fed_by(shapes, inlet.point_m);
    if (!region)
      return bad_input("Inlet '" + inlet.name +
                           "' feeds nothing: move it into a chamber or channel (or within 1 mm of one).",
                       {{ProblemPlace::Kind::kInlet, static_cast<int>(i)}});
    const GroupId group = region->kind == RegionKind::kChamber ? mesh.chamber_group[region->part]
                                                               : mesh.channel_group[region->part];
    auto& feeder = fed_by[index_of(group)];
    if (feeder)
      return bad_input("Inlets '" + layout.inlets[index_of(*feeder)].name + "' and '" + inlet.name +
                           "' both feed " + part_name(layout, *region) + ": keep one of them.",
                       {{ProblemPlace::Kind::kInlet, static_cast<int>(i)}});
    feeder = InletId{static_cast<int>(i)};
  }
  for (int g = 0; g < groups; ++g) {
    if (fed_by[g]) {
      mesh.group_inlet.push_back(*fed_by[g]);
      continue;
    }
    for (std::size_t i = 0; i < mesh.chamber_group.size(); ++i)
      if (index_of(mesh.chamber_group[i]) == static_cast<std::size_t>(g))
        return bad_input("No inlet reaches chamber '" + layout.chambers[i].name +
                             "': add an inlet or a channel from a chamber that has one.",
                         {{ProblemPlace::Kind::kChamber, static_cast<int>(i)}});
    for (std::size_t i = 0; i < mesh.channel_group.size(); ++i)
      if (index_of(mesh.channel_group[i]) == static_cast<std::size_t>(g))
        return bad_input("Channel '" + layout.channels[i].name +
                             "' joins no chamber and no inlet: lengthen it or remove it.",
                         {{ProblemPlace::Kind::kChannel, static_cast<int>(i)}});
  }
  return std::nullopt;
}

}  // namespace

std::optional<FlatRegion> region_fed_by(const LayoutShapes& shapes, const Vec2& point) {
  std::optional<FlatRegion> nearest;
  double best = kInletReach;
  const auto consider = [&](const Polygon& loop, FlatRegion region) {
    const double distance = contains(loop, point) ? 0.0 : distance_to_loop_m(loop, point);
    if (distance < best || (!nearest && distance <= best)) {
      best = distance;
      nearest = region;
    }
  };
  for (std::size_t i = 0; i < shapes.chambers.size(); ++i)
    consider(shapes.chambers[i].boundary_m, {RegionKind::kChamber, static_cast<int>(i)});
  for (std::size_t i = 0; i < shapes.channels_m.size(); ++i)
    consider(shapes.channels_m[i], {RegionKind::kChannel, static_cast<int>(i)});
  return nearest;
}

std::optional<Problem> assign_groups(const Layout& layout, const LayoutShapes& shapes, FlatMesh& mesh) {
  OpenRegions open(shapes);
  join_across_edges(mesh, open);
  join_covered_channels(layout, shapes, mesh, open);
  std::vector<int> group_of_root(open.count(), -1);
  int groups = 0;
  for (int i = 0; i < open.count(); ++i) {
    int& group = group_of_root[open.root(i)];
    if (group < 0) group = groups++;
    auto& list = i < static_cast<int>(layout.chambers.size()) ? mesh.chamber_group : mesh.channel_group;
    list.push_back(GroupId{group});
  }
  return feed_groups(layout, shapes, mesh, groups);
}

}  // namespace wrapgauge
