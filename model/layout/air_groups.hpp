#pragma once
// Which chambers and channels share one pressure, and which inlet feeds them.

#include "model/layout/layout_lines.hpp"

namespace wrapgauge {

struct AirGroups {
  std::vector<GroupId> chamber_group, channel_group;
  int count = 0;
};

// Groups from the regions on the sides of lines; lines without an open region on both are passed over. A
// channel that lies wholly inside a chamber joins it. Groups are numbered by their first chamber, then by
// their first channel.
AirGroups air_groups(const Layout& layout, const LayoutShapes& shapes,
                     const std::vector<RegionSides>& neighbours);

bool has_chamber(const AirGroups& groups, GroupId group);

struct FedGroups {
  std::vector<std::optional<InletId>> fed_by;  // a group each
  std::vector<Problem>
      problems;  // inlets that feed nothing or no chamber, two for a group, chambers that no inlet reaches
};
FedGroups feed_groups(const Layout& layout, const LayoutShapes& shapes, const AirGroups& groups);

// The last of them; its place is the chamber.
bool says_unreached(const Problem& problem);

// Fills chamber_group, channel_group and group_inlet of a mesh: open regions on the two sides of a line are
// joined. The first of the problems above, or a channel without chamber and inlet.
std::optional<Problem> assign_groups(const Layout& layout, const LayoutShapes& shapes,
                                     const std::vector<RegionSides>& neighbours, FlatMesh& mesh);

// The open region an inlet feeds: chamber or channel, the one it lies in or the nearest within 1 mm.
std::optional<FlatRegion> region_fed_by(const LayoutShapes& shapes, const Vec2& point);

}  // namespace wrapgauge
