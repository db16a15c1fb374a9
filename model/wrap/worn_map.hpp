#pragma once
// Where a closing layout starts when it is put on: stretched evenly round each section so that its edges
// meet.

#include "model/layout/closing_lines.hpp"
#include "model/wrap/laid_map.hpp"

namespace wrapgauge {

// The anchor's meridian is the geodesic across the layout through the anchor. A flat point goes to the
// section through the meridian at arc length y; where it lies between the two closing lines, as a share of
// the closing length there, less the layout point's share, is the share of that section's girth away from the
// meridian. Sections are cut every 2 mm; between them points are interpolated and brought back onto the
// surface. Paired closing vertices with the same y coincide exactly. Problems: the meridian or a section runs
// off the surface (mm, past which end).
struct WornMap {
  Points3 worn_m;
  std::vector<GirthSection> sections;  // the cut ones, distal first
};
Result<WornMap> put_on(const BodySurface& body, const AnchorFrame& anchor, const FlatMesh& mesh,
                       const Vec2& layout_point_m, const ClosingLines& lines);

}  // namespace wrapgauge
