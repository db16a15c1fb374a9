#include "model/contact/plane_cut.hpp"

#include <gtest/gtest.h>

#include "hand_made.hpp"

namespace wrapgauge {
namespace {

constexpr double kCutRadius = 0.04, kCutWidth = 0.06;

TEST(PlaneCut, ThroughAHoopCarriesTwiceItsTension) {
  const hand_made::Worn worn = hand_made::ring(kCutRadius, kCutWidth, 1.0, 120, 8);
  const Points3& positions = worn.path.states.back().positions_m;
  // Tension T along the wrap: the nominal block is T times the deformed wrap direction of each triangle.
  SheetStress stress;
  stress.nominal_tension_n_per_m.setZero(3, 2 * worn.path.sheet.triangles.rows());
  const double tension = 50.0;
  for (Eigen::Index t = 0; t < worn.path.sheet.triangles.rows(); ++t) {
    Vec3 centre = Vec3::Zero();
    for (int k = 0; k < 3; ++k) centre += positions.row(worn.path.sheet.triangles(t, k)).transpose() / 3.0;
    stress.nominal_tension_n_per_m.col(2 * t) = tension * Vec3(-centre.y(), centre.x(), 0.0).normalized();
  }
  const Vec3 normal(std::cos(1.2), std::sin(1.2), 0.0);
  const Vec3 force =
      tension_across_n(worn.setup.flat, worn.path.sheet, stress, positions, {Vec3::Zero(), normal});
  EXPECT_NEAR(force.dot(normal), -2.0 * tension * kCutWidth, 1e-3 * 2.0 * tension * kCutWidth);
  EXPECT_NEAR(force.z(), 0.0, 1e-12);
}

TEST(PlaneCut, TractionOnHalfARingIsPressureTimesDiameterTimesWidth) {
  hand_made::Worn worn = hand_made::ring(kCutRadius, kCutWidth, 1.0, 120, 8);
  hand_made::press_ring(worn, 2e3);
  const EquilibriumState& state = worn.path.states.back();
  const TriangleMesh side = skin_side(worn.setup, worn.path.sheet, state.positions_m);
  Points3 traction = state.contact_force_n;
  for (Eigen::Index v = 0; v < traction.rows(); ++v) traction.row(v) /= state.contact_area_m2[v];
  const Vec3 normal(std::cos(0.7), std::sin(0.7), 0.0);
  const double expected = 2e3 * 2.0 * kCutRadius * kCutWidth;
  const Vec3 force = traction_on_half_n(side, traction, {Vec3::Zero(), normal});
  EXPECT_NEAR((force - expected * normal).norm(), 0.0, 1e-3 * expected);
}

TEST(PlaneCut, CavityPushIsGaugePressureTimesCrossSection) {
  // Outer sheet of a square pad raised to a prism with a triangular roof: base 40 mm, height 10 mm.
  hand_made::Worn worn = hand_made::flat_pad(20, 0.04);
  EquilibriumState state = worn.path.states.back();
  for (int v = 0; v < worn.setup.flat.vertices_m.rows(); ++v) {
    const double x = worn.setup.flat.vertices_m(v, 0);
    state.positions_m(worn.path.sheet.outer_node[v], 2) = 0.5 * std::min(x, 0.04 - x);
  }
  state.group_pressure_pa[0] = 5e3;
  const Vec3 push = cavity_push_n(worn.path.sheet, state, {Vec3(0.3, 0.0207, 0.1), Vec3::UnitY()});
  EXPECT_NEAR(push.y(), 5e3 * 0.5 * 0.04 * 0.01, 1e-12);
  EXPECT_NEAR(push.x(), 0.0, 1e-15);
}

}  // namespace
}  // namespace wrapgauge
