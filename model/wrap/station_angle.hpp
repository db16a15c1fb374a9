#pragma once
// A point on the skin <-> its station along the body's axis and its angle about the middle of the section
// there. Both ways, and nowhere else: what the window reads off a click is where the plan puts the anchor.

#include "model/core/result.hpp"
#include "model/wrap/body_surface.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {

// The angle counts from the body's +x (see axis_angle.hpp) about the centre of the area that the longest
// closed line of the section goes round; 0 <= angle < 360. Problem: no closed section at the point's station.
Result<AnchorAtStation> station_and_angle(const PlaneSections& sections, const Axis& axis,
                                          const Vec3& point_m);

// Where a ray from that centre last leaves the skin, and so the inverse for every point of a section that no
// other skin of the section lies outside of. Problems: a number that is not finite; a station beyond the body
// or without a closed section (mm).
Result<SurfacePoint> skin_point_at(const BodySurface& body, const AnchorAtStation& place);

}  // namespace wrapgauge
