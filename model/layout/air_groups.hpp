#pragma once
// Which chambers and channels share one pressure, and which inlet feeds them.

#include "model/layout/layout_shapes.hpp"

namespace wrapgauge {

// Fills chamber_group, channel_group and group_inlet of a mesh that has its triangles and regions.
// Open regions that share a mesh edge are joined; a channel that lies wholly inside a chamber joins it.
// Groups are numbered by their first chamber, then by their first channel.
// Problems: a group without an inlet or with two; an inlet more than 1 mm from every open region.
std::optional<Problem> assign_groups(const Layout& layout, const LayoutShapes& shapes, FlatMesh& mesh);

// The open regions an inlet could feed: chamber or channel, the one it lies in or the nearest within 1 mm.
std::optional<FlatRegion> region_fed_by(const LayoutShapes& shapes, const Vec2& point);

}  // namespace wrapgauge
