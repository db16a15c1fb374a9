#pragma once
// The layout triangulated: one flat mesh, each triangle knowing what it is part of.

#include <optional>
#include <vector>

#include "model/core/array.hpp"
#include "model/core/result.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

enum class RegionKind : unsigned char {
  kWeld,     // both sheets fused
  kChamber,  // open between the sheets; `part` = chamber index
  kChannel,  // open; `part` = channel index
  kStrap,    // cloth only; `part` = strap index
};

struct FlatRegion {
  RegionKind kind = RegionKind::kWeld;
  int part = 0;
};

struct FlatMesh {
  Points2 vertices_m;
  Triangles triangles;              // counter-clockwise in the layout frame
  std::vector<FlatRegion> regions;  // one a triangle
  // Group of each chamber and channel (connected open regions share one), and the inlet feeding each group.
  std::vector<GroupId> chamber_group;
  std::vector<GroupId> channel_group;
  std::vector<InletId> group_inlet;
  // Vertices on the two lines that meet when closed, ordered by y; empty for a layout that does not close.
  // Both lines are sampled with the same y wherever both exist, unless the drawing forces otherwise.
  std::vector<int> closing_from;
  std::vector<int> closing_to;
};

struct FlatMeshOptions {
  Length edge = 4.0 * mm;  // wanted edge length away from seams
  // Wanted edge length beside seams and inset seams (<= edge), held over `seam_band`, then growing to `edge`.
  Length seam_edge = 4.0 * mm;
  Length seam_band = 6.0 * mm;
};

// `closing_length` trims the layout at closure.from_x + closing_length (none: layout does not close, or is
// meshed whole). Of every mesh it holds that
// - no triangle is turned over, and no angle is below 20 degrees but where the drawing has a sharper corner;
// - every outline, chamber, inset seam, channel and strap edge is a chain of mesh edges, curves as chords of
//   the smaller wanted edge length (coarsened_lines.hpp says how far off), and triangles of different regions
//   meet nowhere else;
// - the triangles of a part add up to its drawn area, less what the chords cut off; insets keep their area;
// - no edge inside an open region spans from weld to weld;
// - the same input gives the same mesh.
// Problems: trimming line would cut a chamber or channel (named, mm), lies beyond the layout (mm missing) or
// meets it in a point only; a group without an inlet or with two; numbers or shapes that cannot be meshed.
Result<FlatMesh> triangulate_layout(const Layout& layout, std::optional<Length> closing_length,
                                    const FlatMeshOptions& options);

}  // namespace wrapgauge
