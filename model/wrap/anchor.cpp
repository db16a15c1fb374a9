#include "model/wrap/anchor.hpp"

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "model/core/number_text.hpp"
#include "model/wrap/station_angle.hpp"

namespace wrapgauge {
namespace {

double radians(double degrees) {
  return degrees * std::numbers::pi / 180.0;
}

Result<SurfacePoint> at_point(const BodySurface& body, const AnchorAtPoint& anchor) {
  if (!anchor.point_m.allFinite())
    return bad_input(Phrase::worded("The anchor point has a coordinate that is not a finite number."));
  const SurfacePoint place = body.nearest().at(anchor.point_m);
  if (place.distance_m > kAnchorReach.si())
    return bad_input(Phrase::worded(
        "The anchor point is %1 from the nearest skin and %2 is the most; check its coordinates and unit.",
        {millimetres_of(Length(place.distance_m)), millimetres_of(kAnchorReach)}));
  return place;
}

}  // namespace

Result<AnchorFrame> find_anchor(const BodySurface& body, const Placement& placement) {
  if (!std::isfinite(placement.turn_deg))
    return bad_input(Phrase::worded("The placement's turn is not a finite number."));
  const auto place = std::holds_alternative<AnchorAtPoint>(placement.anchor)
                         ? at_point(body, std::get<AnchorAtPoint>(placement.anchor))
                         : skin_point_at(body, std::get<AnchorAtStation>(placement.anchor));
  if (!place) return place.problem();
  const Vec3 axis = body.axis().direction, outward = body.outward(*place);
  const Vec3 round = axis.cross(outward);
  if (round.norm() <
      0.1)  // within 6 degrees of the axis: an end cap, "round the limb" has no direction there
    return bad_input(Phrase::worded(
        "At the anchor the skin faces along the body's axis (%1 degrees from it), so no direction goes round "
        "the limb; move the anchor off the end.",
        {figures_of(fixed_text(std::asin(std::min(1.0, round.norm())) * 180.0 / std::numbers::pi, 1))}));
  const Eigen::AngleAxisd turn(radians(placement.turn_deg), outward);
  const Vec3 wrap = turn * round.normalized(), across = outward.cross(wrap);
  const double leans = axis.dot(outward) * std::cos(radians(placement.turn_deg));
  return AnchorFrame{*place, wrap, across, outward,
                     std::sqrt(1.0 - leans * leans) * across + leans * outward};
}

Result<SectionLoop> closed_section(const BodySurface& body, const Vec3& anchor_m,
                                   const Vec3& section_normal) {
  auto loop = loop_near(body, anchor_m, section_normal);
  if (!loop)
    return bad_input(Phrase::worded(
        "The section round the body at the anchor (station %1) is not closed, so a closing layout cannot go "
        "round there; move the anchor away from the ends or turn the layout less.",
        {millimetres_of(Length(body.station_m(anchor_m)))}));
  return *std::move(loop);
}

}  // namespace wrapgauge
