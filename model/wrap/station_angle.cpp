#include "model/wrap/station_angle.hpp"

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "model/body/axis_angle.hpp"
#include "model/core/number_text.hpp"
#include "model/wrap/section_loop.hpp"

namespace wrapgauge {
namespace {

std::string in_mm(double metres) {
  return fixed_text(metres / mm.si(), 1) + " mm";
}

// The section that angles at a station count in.
Result<SectionLoop> section_of_station(const PlaneSections& sections, const Axis& axis, double station_m) {
  auto loop = longest_loop(sections, axis.origin_m + station_m * axis.direction, axis.direction);
  if (!loop)
    return bad_input("The body has no closed section at the anchor's station of " + in_mm(station_m) +
                     "; choose a station further from the ends.");
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
    return bad_input("The anchor's station or angle is not a finite number.");
  if (station_m < 0.0 || station_m > body.last_station_m())
    return bad_input("The anchor's station is " + in_mm(station_m) + ", but the body reaches from 0 to " +
                     in_mm(body.last_station_m()) + " along its axis; choose a station between.");
  const auto loop = section_of_station(body.sections(), body.axis(), station_m);
  if (!loop) return loop.problem();
  const Vec3 axis = body.axis().direction;
  const Eigen::AngleAxisd turn(place.angle_deg * std::numbers::pi / 180.0, axis);
  const auto skin_m = loop->outermost(turn * zero_angle_direction(axis));
  if (!skin_m)
    return bad_input("No skin lies at " + fixed_text(place.angle_deg, 1) +
                     " degrees about the axis at station " + in_mm(station_m) +
                     "; place the anchor by a point instead.");
  return body.nearest().at(*skin_m);
}

}  // namespace wrapgauge
