#include "app/desk/views/skin_probe.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/contact/skin_side.hpp"
#include "model/limits/limit_place.hpp"
#include "model/wrap/station_angle.hpp"

namespace wrapgauge {

std::optional<Vec3> place_at(const SkinSurface& skin, const LimbView& view, double x, double y) {
  constexpr double kAway_m = 4.0;  // farther than any body reaches
  const Vec3 eye = view.rows.row(2);
  const Vec3 on_plane = view.centre_m + view.rows.transpose() *
                                            Vec3(x - 0.5 * view.width, 0.5 * view.height - y, 0.0) /
                                            view.pixels_per_m;
  return skin.first_met(on_plane + kAway_m * eye, -eye, 2.0 * kAway_m);
}

bool is_seen(const SkinSurface& skin, const LimbView& view, const Vec3& point_m) {
  constexpr double kNear_m = 2e-3;
  const RasterPoint at = view.project(point_m);
  const auto met = place_at(skin, view, at.x, at.y);
  return !met || (*met - point_m).dot(view.rows.row(2)) < kNear_m;
}

namespace {

std::string part_name(const Layout& layout, const FlatRegion& region) {
  const auto part = static_cast<std::size_t>(region.part);
  switch (region.kind) {
    case RegionKind::kChamber:
      return layout.chambers[part].name;
    case RegionKind::kChannel:
      return layout.channels[part].name;
    case RegionKind::kStrap:
      return layout.straps[part].name;
    case RegionKind::kWeld:
      break;
  }
  return "seam";
}

double mixed(const Eigen::VectorXd& value, const Triangles& triangles, const SurfacePoint& at) {
  double sum = 0.0;
  for (int k = 0; k < 3; ++k) sum += at.barycentric[k] * value[triangles(at.face, k)];
  return sum;
}

// Between two rows the stricter one is read: what lies between their limits is no row.
double lowest(const Eigen::VectorXd& value, const Triangles& triangles, const SurfacePoint& at) {
  double least = value[triangles(at.face, 0)];
  for (int k = 1; k < 3; ++k) least = std::min(least, value[triangles(at.face, k)]);
  return least;
}

// What the layout does there, when it covers the place.
void read_layout(const ShownPlan& shown, const StateContact& contact, int state, PlaceReading& reading) {
  constexpr double kCovered_m = 0.5e-3;
  const Estimate& estimate = *shown.estimate();
  const FlatMesh& flat = estimate.setup.flat;
  reading.pressure = Pressure();
  if (!contact.worn_tree) return;
  const SurfacePoint at = contact.worn_tree->at(reading.point_m);
  const bool on_rim = at.barycentric.minCoeff() <= 0.0;
  if (at.distance_m > (on_rim ? kCovered_m : 3.0 * kCovered_m)) return;
  const EquilibriumState& now = estimate.path.states[static_cast<std::size_t>(state)];
  reading.pressure = Pressure(mixed(contact.map.on_layout_pa, flat.triangles, at));
  reading.mean_1cm2 = Pressure(mixed(contact.map.mean_1cm2_pa, flat.triangles, at));
  reading.share = mixed(contact.share_of_limit, flat.triangles, at);
  reading.limit = Pressure(lowest(contact.threshold_pa, flat.triangles, at) * estimate.limits.model_factor);
  reading.indentation = Length(mixed(now.indentation_m, flat.triangles, at));
  reading.tissue_depth = Length(mixed(estimate.tissue_depth_m, flat.triangles, at));
  reading.part = part_name(estimate.setup.layout, flat.regions[static_cast<std::size_t>(at.face)]);
  reading.chamber = chamber_of_triangles(estimate.setup.layout, flat)[static_cast<std::size_t>(at.face)];
  if (reading.chamber) reading.part = estimate.setup.layout.chambers[index_of(*reading.chamber)].name;
}

}  // namespace

std::optional<PlaceReading> read_place(const ShownPlan& shown, int state, const Vec3& place_m) {
  if (!shown.body()) return std::nullopt;
  PlaceReading reading;
  reading.point_m = shown.skin()->at(place_m).point_m;
  const Axis& axis = shown.body()->axis;
  reading.station_m = (reading.point_m - axis.origin_m).dot(axis.direction);
  if (const auto place = station_and_angle(*shown.sections(), axis, reading.point_m))
    reading.angle_deg = place->angle_deg;
  for (const BonySite& site : shown.sites())
    if (lies_on(site, reading.point_m)) reading.site = site.name;
  if (const auto contact = shown.contact(state)) read_layout(shown, *contact, state, reading);
  return reading;
}

}  // namespace wrapgauge
