#pragma once
// Which chambers and channels share one pressure, and which inlet feeds them.

#include <array>

#include "model/layout/layout_shapes.hpp"

namespace wrapgauge {

struct AirGroups {
  std::vector<GroupId> chamber_group, channel_group;
  int count = 0;
};

// Groups from pairs of regions that lie side by side; pairs that are not both open are passed over. A channel
// that lies wholly inside a chamber joins it. Groups are numbered by their first chamber, then by their first
// channel.
using RegionPair = std::array<std::optional<FlatRegion>, 2>;
AirGroups air_groups(const Layout& layout, const LayoutShapes& shapes,
                     const std::vector<RegionPair>& neighbours);

struct FedGroups {
  std::vector<std::optional<InletId>> fed_by;  // a group each
  std::vector<Problem>
      problems;  // inlets that feed nothing, two inlets for a group, chambers that no inlet reaches
};
FedGroups feed_groups(const Layout& layout, const LayoutShapes& shapes, const AirGroups& groups);

// Fills chamber_group, channel_group and group_inlet of a mesh that has its triangles and regions: open
// regions that share a mesh edge are joined. The first of the problems above, or a channel without chamber
// and inlet.
std::optional<Problem> assign_groups(const Layout& layout, const LayoutShapes& shapes, FlatMesh& mesh);

// The open region an inlet feeds: chamber or channel, the one it lies in or the nearest within 1 mm.
std::optional<FlatRegion> region_fed_by(const LayoutShapes& shapes, const Vec2& point);

std::string part_name(const Layout& layout, const FlatRegion& region);  // "chamber 'left'", "weld"

}  // namespace wrapgauge
