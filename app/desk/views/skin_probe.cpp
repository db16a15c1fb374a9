#include "app/desk/views/skin_probe.hpp"

#include <vtkCellArray.h>
#include <vtkNew.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkStaticCellLocator.h>

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "model/contact/skin_side.hpp"
#include "model/limits/limit_place.hpp"
#include "model/wrap/station_angle.hpp"

namespace wrapgauge {

struct SightLine::Tree {
  vtkNew<vtkPolyData> data;
  vtkNew<vtkStaticCellLocator> locator;
};

SightLine::SightLine(const TriangleMesh& surface) {
  if (surface.faces.rows() == 0) return;
  tree_ = std::make_unique<Tree>();
  vtkNew<vtkPoints> points;
  points->SetDataTypeToDouble();
  for (Eigen::Index v = 0; v < surface.vertices_m.rows(); ++v)
    points->InsertNextPoint(surface.vertices_m(v, 0), surface.vertices_m(v, 1), surface.vertices_m(v, 2));
  vtkNew<vtkCellArray> cells;
  for (Eigen::Index f = 0; f < surface.faces.rows(); ++f) {
    const vtkIdType corner[3] = {surface.faces(f, 0), surface.faces(f, 1), surface.faces(f, 2)};
    cells->InsertNextCell(3, corner);
  }
  tree_->data->SetPoints(points);
  tree_->data->SetPolys(cells);
  tree_->locator->SetDataSet(tree_->data);
  tree_->locator->BuildLocator();
}

SightLine::~SightLine() = default;
SightLine::SightLine(SightLine&&) noexcept = default;
SightLine& SightLine::operator=(SightLine&&) noexcept = default;

std::optional<Vec3> SightLine::place_at(const LimbView& view, double x, double y) const {
  constexpr double kAway_m = 4.0;  // farther than any body reaches
  if (!tree_) return std::nullopt;
  const Vec3 eye = view.rows.row(2);
  const Vec3 on_plane = view.centre_m + view.rows.transpose() *
                                            Vec3(x - 0.5 * view.width, 0.5 * view.height - y, 0.0) /
                                            view.pixels_per_m;
  Vec3 from = on_plane + kAway_m * eye, to = on_plane - kAway_m * eye, met;
  double share = 0.0, corner[3];
  int part = 0;
  if (tree_->locator->IntersectWithLine(from.data(), to.data(), 0.0, share, met.data(), corner, part) == 0)
    return std::nullopt;
  return met;
}

bool SightLine::is_seen(const LimbView& view, const Vec3& point_m) const {
  constexpr double kNear_m = 2e-3;
  const RasterPoint at = view.project(point_m);
  const auto met = place_at(view, at.x, at.y);
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
  return "weld";
}

double mixed(const Eigen::VectorXd& value, const Triangles& triangles, const SurfacePoint& at) {
  double sum = 0.0;
  for (int k = 0; k < 3; ++k) sum += at.barycentric[k] * value[triangles(at.face, k)];
  return sum;
}

// What the layout does there, when it covers the place.
void read_layout(const ShownPlan& shown, const StateContact& contact, int state, PlaceReading& reading) {
  constexpr double kCovered_m = 0.5e-3;
  const Estimate& estimate = *shown.estimate();
  const FlatMesh& flat = estimate.setup.flat;
  reading.pressure = Pressure();
  if (flat.triangles.rows() == 0) return;
  const SurfacePoint at = NearestPoint({contact.on_skin.points_m, flat.triangles}).at(reading.point_m);
  const bool on_rim = at.barycentric.minCoeff() <= 0.0;
  if (at.distance_m > (on_rim ? kCovered_m : 3.0 * kCovered_m)) return;
  const EquilibriumState& now = estimate.path.states[static_cast<std::size_t>(state)];
  reading.pressure = Pressure(mixed(contact.map.on_layout_pa, flat.triangles, at));
  reading.mean_1cm2 = Pressure(mixed(contact.map.mean_1cm2_pa, flat.triangles, at));
  reading.limit = Pressure(mixed(contact.threshold_pa, flat.triangles, at) * estimate.limits.model_factor);
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
  Points3 asked(1, 3);
  asked.row(0) = place_m;
  reading.point_m = shown.skin()->nearest(asked).points_m.row(0);
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
