#pragma once
// Small devices with known answers, triangulated and inflated by the calls that a plan uses. Where they lie
// at first, what holds them and what they press on is set up here, not by the wrap.

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <vector>

#include "model/inflation/load_path.hpp"
#include "tests/inflation/round_limb.hpp"
#include "tests/published/check_row.hpp"

namespace wrapgauge::published {

inline Polygon circle(double radius_m, int sides) {
  Polygon polygon;
  for (int k = 0; k < sides; ++k) {
    const double angle = 2.0 * M_PI * k / sides;
    polygon.emplace_back(radius_m * std::cos(angle), radius_m * std::sin(angle));
  }
  return polygon;
}

using small::rectangle;
using small::RoundLimb;

// A flat plate below the layout: the half space z < height.
class PlateBelow : public SignedDistance {
 public:
  explicit PlateBelow(double height_m) : height_m_(height_m) {}
  DistanceSample at(const Vec3& point_m) const override {
    return {point_m.z() - height_m_, Vec3::UnitZ(), Mat3::Zero()};
  }

 private:
  double height_m_;
};

constexpr double kRigidPaPerM = 2e8;  // a "rigid" body gives way by micrometres

inline void press_on(InflationSetup& setup, std::shared_ptr<const SignedDistance> body,
                     double foundation_pa_per_m) {
  setup.body = std::move(body);
  setup.foundation_pa_per_m = Eigen::VectorXd::Constant(setup.flat.vertices_m.rows(), foundation_pa_per_m);
}

// Flat in z = 0, the outer sheet on the +z side, everything fused held.
inline void lay_flat_and_clamp(InflationSetup& setup) {
  const Eigen::Index count = setup.flat.vertices_m.rows();
  setup.start_m = Points3::Zero(count, 3);
  setup.start_m.leftCols(2) = setup.flat.vertices_m;
  setup.start_outward = Points3::Zero(count, 3);
  setup.start_outward.col(2).setOnes();
  const SheetMesh sheet = make_sheet_mesh(setup.flat);
  for (int v = 0; v < count; ++v)
    if (sheet.skin_node[v] == sheet.outer_node[v]) setup.held.push_back(v);
}

// Sheets without bending or thickness, tight residual.
inline InflationOptions membrane_only(int steps) {
  InflationOptions options;
  options.bending = false;
  options.closed_state = false;
  options.steps = steps;
  options.contact_offset = false;
  options.residual_tolerance = 1e-4;
  return options;
}

// How far the skin sheet has bulged to -z.
inline double height_m(const LoadPath& path, const EquilibriumState& state) {
  double lowest = 0.0;
  for (int node : path.sheet.skin_node) lowest = std::min(lowest, state.positions_m(node, 2));
  return -lowest;
}

// Between the skin sheet and the plane z = 0, over the flat triangles that `wanted` keeps; volume and the
// area of the plane it stands on.
struct Bulge {
  double volume_m3 = 0.0, area_m2 = 0.0;
};
template <class Wanted>
Bulge bulge(const FlatMesh& flat, const LoadPath& path, const EquilibriumState& state, const Wanted& wanted) {
  Bulge sum;
  for (int t : path.sheet.cavities[0].skin_triangles) {
    const auto corners = flat.triangles.row(path.sheet.flat_triangle[t]);
    const Vec2 middle = (flat.vertices_m.row(corners(0)) + flat.vertices_m.row(corners(1)) +
                         flat.vertices_m.row(corners(2))) /
                        3.0;
    if (!wanted(middle)) continue;
    const auto nodes = path.sheet.triangles.row(t);
    const Vec3 a = state.positions_m.row(nodes(0)), b = state.positions_m.row(nodes(1)),
               c = state.positions_m.row(nodes(2));
    const double area = 0.5 * ((b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x()));
    sum.area_m2 += area;
    sum.volume_m3 -= area * (a.z() + b.z() + c.z()) / 3.0;
  }
  return sum;
}
inline double bulge_volume_m3(const FlatMesh& flat, const LoadPath& path, const EquilibriumState& state) {
  return bulge(flat, path, state, [](const Vec2&) { return true; }).volume_m3;
}

inline double contact_force_n(const EquilibriumState& state) {
  return state.contact_pressure_pa.dot(state.contact_area_m2);
}

}  // namespace wrapgauge::published
