#include "model/wrap/station_angle.hpp"

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "model/body/axis_angle.hpp"
#include "model/core/number_text.hpp"
#include "model/wrap/section_loop.hpp"

namespace wrapgauge {
namespace {

// The section that angles at a station count in.
Result<SectionLoop> section_of_station(const PlaneSections& sections, const Axis& axis, double station_m) {
  auto loop = longest_loop(sections, axis.origin_m + station_m * axis.direction, axis.direction);
  if (!loop)
    return bad_input(
        Phrase::worded("The body has no closed section at the anchor's station of %1; choose a "
                       "station further from the ends.",
                       {millimetres_of(Length(station_m))}));
  return *std::move(loop);
}

}  // namespace

Result<AnchorAtStation> station_and_angle(const PlaneSections& sections, const Axis& axis,
                                          const Vec3& point_m) {
  const double station_m = (point_m - axis.origin_m).dot(axis.direction);
  const auto loop = section_of_station(sections, axis, station_m);
  if (!loop) return loop.problem();
  return AnchorAtStation{Length(station_m), angle_about_deg(axis.direction, point_m - loop->centre_m())};
}

Result<SurfacePoint> skin_point_at(const BodySurface& body, const AnchorAtStation& place) {
  const double station_m = place.station.si();
  if (!std::isfinite(station_m) || !std::isfinite(place.angle_deg))
    return bad_input(Phrase::worded("The anchor's station or angle is not a finite number."));
  if (station_m < 0.0 || station_m > body.last_station_m())
    return bad_input(Phrase::worded(
        "The anchor's station is %1, but the body reaches from 0 to %2 along its axis; choose a station "
        "between.",
        {millimetres_of(place.station), millimetres_of(Length(body.last_station_m()))}));
  const auto loop = section_of_station(body.sections(), body.axis(), station_m);
  if (!loop) return loop.problem();
  const Vec3 axis = body.axis().direction;
  const Eigen::AngleAxisd turn(place.angle_deg * std::numbers::pi / 180.0, axis);
  const auto skin_m = loop->outermost(turn * zero_angle_direction(axis));
  if (!skin_m)
    return bad_input(Phrase::worded(
        "No skin lies at %1 degrees about the axis at station %2; place the anchor by a point instead.",
        {figures_of(fixed_text(place.angle_deg, 1)), millimetres_of(place.station)}));
  return body.nearest().at(*skin_m);
}

}  // namespace wrapgauge
