#include "model/body/skin_region.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/body/axis_angle.hpp"

namespace wrapgauge {
namespace {

// How far an angle lies outside the arc from one angle on to the other.
double degrees_outside(double angle, double from_deg, double to_deg) {
  const double width = to_deg - from_deg;
  if (width >= 360.0) return 0.0;
  const double past = std::fmod(std::fmod(angle - from_deg, 360.0) + 360.0, 360.0);
  return past <= width ? 0.0 : std::min(past - width, 360.0 - past);
}

Length outside_of(const NearPoint& place, const Axis&, const Vec3& point_m) {
  return std::max(Length((point_m - place.point_m).norm()) - place.radius, Length());
}

Length outside_of(const BetweenStations& place, const Axis& axis, const Vec3& point_m) {
  const Vec3 from_origin = point_m - axis.origin_m;
  const double station = from_origin.dot(axis.direction);
  const Vec3 across = from_origin - station * axis.direction;
  const double along = std::max({0.0, place.from.si() - station, station - place.to.si()});
  const double turned =
      degrees_outside(angle_about_deg(axis.direction, across), place.from_deg, place.to_deg);
  return Length(std::hypot(along, across.norm() * turned * std::numbers::pi / 180.0));
}

// Where the point stands among the distances: between two of them, or at an end.
struct Between {
  const TissueAtDistance &low, &high;
  double share;
};

std::optional<Between> between_distances(const SkinRegion& region, const Vec3& point_m) {
  const auto* place = std::get_if<NearPoint>(&region.place);
  const auto& steps = region.by_distance;
  if (!place || steps.empty()) return std::nullopt;
  const Length distance((point_m - place->point_m).norm());
  std::size_t next = 0;
  while (next < steps.size() && steps[next].distance < distance) ++next;
  if (next == 0) return Between{steps.front(), steps.front(), 0.0};
  if (next == steps.size()) return Between{steps.back(), steps.back(), 0.0};
  const TissueAtDistance &low = steps[next - 1], &high = steps[next];
  return Between{low, high, (distance - low.distance) / (high.distance - low.distance)};
}

}  // namespace

std::optional<Length> tissue_depth_at(const SkinRegion& region, const Vec3& point_m) {
  const auto found = between_distances(region, point_m);
  if (!found) return region.tissue_depth;
  if (!found->low.tissue_depth || !found->high.tissue_depth) return std::nullopt;
  return *found->low.tissue_depth + found->share * (*found->high.tissue_depth - *found->low.tissue_depth);
}

std::optional<double> stiffness_factor_at(const SkinRegion& region, const Vec3& point_m) {
  const auto found = between_distances(region, point_m);
  if (!found) return region.stiffness_factor;
  if (!found->low.stiffness_factor || !found->high.stiffness_factor) return std::nullopt;
  return *found->low.stiffness_factor +
         found->share * (*found->high.stiffness_factor - *found->low.stiffness_factor);
}

Length distance_outside(const SkinRegion& region, const Axis& axis, const Vec3& point_m) {
  return std::visit([&](const auto& place) { return outside_of(place, axis, point_m); }, region.place);
}

double share_of_region(const SkinRegion& region, const Axis& axis, const Vec3& point_m) {
  const Length outside = distance_outside(region, axis, point_m);
  if (outside <= Length()) return 1.0;
  if (outside >= region.fade) return 0.0;
  const double left = 1.0 - outside / region.fade;
  return left * left * (3.0 - 2.0 * left);
}

}  // namespace wrapgauge
