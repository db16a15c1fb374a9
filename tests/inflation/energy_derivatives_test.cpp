// Gradient and tangent of every energy against central finite differences, on the whole system and part by
// part.
#include <gtest/gtest.h>

#include <Eigen/Dense>
#include <cmath>

#include "model/inflation/cavity.hpp"
#include "model/inflation/equilibrium_system.hpp"
#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

// Fixed, irregular wobble: no random numbers.
Points3 wobbled(Points3 x, double size_m) {
  for (Eigen::Index i = 0; i < x.rows(); ++i)
    for (int k = 0; k < 3; ++k)
      x(i, k) += size_m * std::sin(12.9898 * static_cast<double>(3 * i + k) + 78.233);
  return x;
}

Eigen::MatrixXd dense(const BlockMatrix& matrix) {
  Eigen::MatrixXd full = Eigen::MatrixXd::Zero(matrix.rows(), matrix.rows());
  for (int column = 0; column < matrix.rows(); ++column)
    for (int k = matrix.column_starts()[column]; k < matrix.column_starts()[column + 1]; ++k)
      full(matrix.row_indices()[k], column) = full(column, matrix.row_indices()[k]) = matrix.values()[k];
  return full;
}

// Largest difference of gradient and tangent from finite differences, relative to their largest entries.
void expect_derivatives(EquilibriumSystem& system, const Points3& x, const std::vector<CavityLoad>& loads) {
  const Evaluation at = system.evaluate(x, loads, TangentKind::kExact);
  const Eigen::MatrixXd tangent = dense(system.tangent());
  Eigen::MatrixXd full = tangent;
  for (std::size_t g = 0; g < loads.size(); ++g) {
    const Eigen::VectorXd column = at.volume_gradient_m2.col(static_cast<Eigen::Index>(g));
    full +=
        loads[g].stiffness_at(at.group_volume_m3(static_cast<Eigen::Index>(g))) * column * column.transpose();
  }
  const double step = 1e-7;
  double worst_gradient = 0.0, worst_tangent = 0.0;
  for (Eigen::Index i = 0; i < x.size(); ++i) {
    Points3 up = x, down = x;
    up.data()[i] += step;
    down.data()[i] -= step;
    const Evaluation a = system.evaluate(up, loads, TangentKind::kNone);
    const Evaluation b = system.evaluate(down, loads, TangentKind::kNone);
    worst_gradient =
        std::max(worst_gradient, std::abs((a.energy_j - b.energy_j) / (2 * step) - at.gradient_n(i)));
    worst_tangent = std::max(
        worst_tangent, ((a.gradient_n - b.gradient_n) / (2 * step) - full.col(i)).lpNorm<Eigen::Infinity>());
  }
  EXPECT_LT(worst_gradient, 2e-6 * at.gradient_n.lpNorm<Eigen::Infinity>());
  EXPECT_LT(worst_tangent, 2e-5 * full.lpNorm<Eigen::Infinity>());
}

TEST(TotalPotential, OfAClosedCuffOnTissueHasItsOwnDerivatives) {
  const InflationSetup setup = small::closed_cuff(0.3);
  EquilibriumSystem system(setup, {});
  const Points3 x = wobbled(0.99 * system.start_m(), 3e-4);
  system.refresh(x);
  expect_derivatives(system, wobbled(x, 1e-4), {CavityLoad::pressure(1500.0)});
}

TEST(TotalPotential, OfAPadBetweenPlatesWithItsWeightHasItsOwnDerivatives) {
  InflationSetup setup = small::closed_cuff(0.0);
  setup.layout.closure.reset();
  setup.flat = triangulate_layout(setup.layout, std::nullopt, {14.0 * mm, 14.0 * mm, 6.0 * mm}).value();
  setup.body.reset();
  small::lay_flat(setup);
  setup.skin_weight_pa = setup.outer_weight_pa = Vec3(0.0, 0.0, -20.0);
  setup.plates = {{PlateFaces::kSkinSheet, Vec3::Zero(), Vec3::UnitZ()},
                  {PlateFaces::kOuterSheet, Vec3(0.0, 0.0, 3e-3), -Vec3::UnitZ()}};
  EquilibriumSystem system(setup, {});
  expect_derivatives(system, wobbled(system.start_m(), 3e-4), {CavityLoad::pressure(1500.0)});
}

// Areas, normals and friction limits follow the shape: tangent and following() together are the derivative.
TEST(FullEquations, HaveTheTangentAndWhatFollowsAsTheirDerivative) {
  const InflationSetup setup = small::closed_cuff(0.3);
  EquilibriumSystem system(setup, {});
  const std::vector<CavityLoad> loads{CavityLoad::pressure(1500.0)};
  const Points3 x = wobbled(0.99 * system.start_m(), 3e-4);
  const Points3 way = wobbled(Points3::Zero(x.rows(), 3), 1.0);
  const auto gradient_at = [&](double length) {
    const Points3 there = x + length * way;
    system.refresh(there);
    return system.evaluate(there, loads, TangentKind::kNone).gradient_n;
  };
  const double step = 1e-8;
  const Eigen::VectorXd change = (gradient_at(step) - gradient_at(-step)) / (2 * step);
  system.refresh(x);
  system.evaluate(x, loads, TangentKind::kExact);
  const Eigen::VectorXd held = dense(system.tangent()).selfadjointView<Eigen::Lower>() *
                               Eigen::Map<const Eigen::VectorXd>(way.data(), way.size());
  const Eigen::VectorXd following = system.following(x, way);
  EXPECT_GT(following.norm(), 100.0);  // N/m
  EXPECT_LT((change - held - following).norm(), 2e-3 * (change - held).norm());
}

// What one evaluation has made of the sheets is used again at the same shape and pressures: never seen.
TEST(TotalPotential, IsTheSameWhateverWasAskedBefore) {
  const InflationSetup setup = small::closed_cuff(0.3);
  EquilibriumSystem used(setup, {});
  const Points3 x = wobbled(0.99 * used.start_m(), 3e-4), elsewhere = wobbled(x, 1e-4);
  const auto full = [](double pa) { return std::vector<CavityLoad>{CavityLoad::pressure(pa)}; };
  used.evaluate(elsewhere, full(1500.0), TangentKind::kExact);
  used.evaluate(x, full(900.0), TangentKind::kNone);
  used.evaluate(x, full(1500.0), TangentKind::kProjected);
  used.evaluate(x, full(1500.0), TangentKind::kNone, TangentKind::kExact);
  for (const TangentKind kind : {TangentKind::kExact, TangentKind::kNone, TangentKind::kProjected}) {
    EquilibriumSystem fresh(setup, {});
    const Evaluation a = used.evaluate(x, full(1500.0), kind), b = fresh.evaluate(x, full(1500.0), kind);
    EXPECT_EQ(a.energy_j, b.energy_j);
    EXPECT_TRUE((a.gradient_n.array() == b.gradient_n.array()).all());
    if (kind != TangentKind::kNone) {
      EXPECT_EQ(used.tangent().values(), fresh.tangent().values());
    }
  }
}

TEST(TotalPotential, FilledWithLiquidHasItsOwnDerivatives) {
  const InflationSetup setup = small::closed_cuff(0.0);
  EquilibriumSystem system(setup, {});
  const Points3 x = wobbled(system.start_m(), 2e-4);
  expect_derivatives(system, x, {CavityLoad::liquid(5e-6, 800.0, 1e9)});
}

TEST(TotalPotential, FilledWithTrappedAirHasItsOwnDerivatives) {
  const InflationSetup setup = small::closed_cuff(0.0);
  EquilibriumSystem system(setup, {});
  const Points3 x = wobbled(system.start_m(), 2e-4);
  expect_derivatives(system, x, {CavityLoad::trapped_air(20e-6, 5e-6)});
}

TEST(TotalPotential, WithSheetsPressedThroughEachOtherHasItsOwnDerivatives) {
  const InflationSetup setup = small::closed_cuff(0.0);
  EquilibriumSystem system(setup, {});
  Points3 x = wobbled(system.start_m(), 1e-4);
  for (std::size_t v = 0; v < system.sheet().skin_node.size(); ++v)
    if (system.sheet().outer_node[v] != system.sheet().skin_node[v])
      x.row(system.sheet().outer_node[v]) -= 5e-4 * setup.start_outward.row(static_cast<Eigen::Index>(v));
  expect_derivatives(system, x, {CavityLoad::pressure(0.0)});
}

// Sheets so soft that hardly anything but bending, stitches and cloth is left.
TEST(TotalPotential, OfBendingAndClothAloneHasItsOwnDerivatives) {
  InflationSetup setup = small::closed_cuff(0.0);
  setup.body = nullptr;
  EquilibriumSystem system(setup, {});
  const Points3 pulled = 1.01 * system.start_m();
  // Not 2e-4: there the cloth of one triangle is just going slack, and its tangent jumps.
  expect_derivatives(system, wobbled(pulled, 1.9e-4), {CavityLoad::pressure(0.0)});
  setup.layout.backing = {};
  setup.skin_law = setup.outer_law = NeoHookean{1.0 * Pa};
  setup.layout.skin_sheet.thickness = setup.layout.outer_sheet.thickness = 20.0 * mm;
  EquilibriumSystem stiff_in_bending(setup, {});
  expect_derivatives(stiff_in_bending, wobbled(stiff_in_bending.start_m(), 2e-3),
                     {CavityLoad::pressure(0.0)});
}

TEST(TotalPotential, WithABondedRimAndRelaxedCompressionHasItsOwnDerivatives) {
  InflationSetup setup = small::closed_cuff(0.3);
  setup.layout.rim_bonded = true;
  InflationOptions options;
  options.relaxed_compression = true;
  EquilibriumSystem system(setup, options);
  expect_derivatives(system, wobbled(1.02 * system.start_m(), 3e-4), {CavityLoad::pressure(1500.0)});
}

TEST(TotalPotential, ProjectedTangentHasNoNegativeEigenvalue) {
  const InflationSetup setup = small::closed_cuff(0.3);
  EquilibriumSystem system(setup, {});
  const Points3 x =
      wobbled(0.85 * system.start_m(), 1e-3);  // compressed: the exact tangent is indefinite here
  system.evaluate(x, {CavityLoad::pressure(1500.0)}, TangentKind::kExact);
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> exact(dense(system.tangent()), Eigen::EigenvaluesOnly);
  EXPECT_LT(exact.eigenvalues()(0), -1e-3);
  system.evaluate(x, {CavityLoad::pressure(1500.0)}, TangentKind::kProjected);
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> projected(dense(system.tangent()),
                                                                 Eigen::EigenvaluesOnly);
  EXPECT_GT(projected.eigenvalues()(0), -1e-8 * projected.eigenvalues().tail(1)(0));
}

TEST(CavityVolume, DoesNotDependOnTheOriginAndScalesWithTheCube) {
  const InflationSetup setup = small::closed_cuff(0.0);
  const EquilibriumSystem system(setup, {});
  const Points3 x = wobbled(system.start_m(), 1e-3);
  const double volume = cavity_volume_m3(system.sheet(), GroupId{0}, x);
  Points3 moved = x;
  moved.rowwise() += Eigen::RowVector3d(0.3, -0.2, 0.1);
  EXPECT_NEAR(cavity_volume_m3(system.sheet(), GroupId{0}, moved), volume, 1e-9 * std::abs(volume) + 1e-16);
  EXPECT_NEAR(cavity_volume_m3(system.sheet(), GroupId{0}, 2.0 * x), 8.0 * volume, 1e-9 * std::abs(volume));
}

TEST(Friction, NeverExceedsItsLimitAndOpposesTheWay) {
  const Vec3 normal = Vec3::UnitZ();
  for (double way : {1e-5, 1e-4, 2e-4, 1e-3, 1e-2}) {
    const FrictionTerm term =
        friction_term({way, 0, 0.5}, Vec3::Zero(), normal, 2.0, TissueSettings{}.elastic_slip_m);
    EXPECT_LE(term.gradient.norm(), 2.0 + 1e-12);
    EXPECT_GT(term.gradient.x(), 0.0);
    EXPECT_EQ(term.gradient.z(), 0.0);
  }
  const Vec3 grip = dragged_grip({0.01, 0, 0}, Vec3::Zero(), normal, TissueSettings{}.elastic_slip_m);
  EXPECT_NEAR(grip.x(), 0.01 - TissueSettings{}.elastic_slip_m, 1e-12);
}

}  // namespace
}  // namespace wrapgauge
