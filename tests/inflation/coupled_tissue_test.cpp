// A worn device on tissue that sinks round a pressed place too.
#include <gtest/gtest.h>

#include <iostream>

#include "model/inflation/coupled_equilibrium.hpp"
#include "model/material/tissue.hpp"
#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

InflationSetup cuff_on_layer(double young_pa, double poisson, double depth_m, double edge_m = 0.010) {
  InflationSetup setup = small::closed_cuff(0.3, edge_m);
  const Eigen::Index count = setup.flat.vertices_m.rows();
  setup.coupled_tissue = TissueLayer{young_pa, poisson, Eigen::VectorXd::Constant(count, depth_m)};
  const double foundation = foundation_modulus(Pressure(young_pa), poisson, Length(depth_m)).value().si();
  setup.foundation_pa_per_m = Eigen::VectorXd::Constant(count, foundation);
  return setup;
}

LoadPath pressed(const InflationSetup& setup) {
  InflationOptions options;
  options.steps = 2;
  auto path = inflate(setup, {3.0 * kPa}, options);
  EXPECT_TRUE(path) << path.problem().message;
  return path ? std::move(path).value() : LoadPath{};
}

double force_of(const EquilibriumState& state) {
  return state.contact_pressure_pa.dot(state.contact_area_m2);
}

// Largest difference between how far the skin is pressed in and what the layer says the forces on it cause.
double worst_misfit_m(const InflationSetup& setup, const LoadPath& path) {
  const EquilibriumState& state = path.states.back();
  const Eigen::Index count = state.indentation_m.size();
  SkinPlaces places{Points3(count, 3), Points3(count, 3), state.contact_area_m2};
  for (Eigen::Index v = 0; v < count; ++v) {
    const Vec3 at = state.positions_m.row(path.sheet.skin_node[v]).transpose();
    const DistanceSample sample = setup.body->at(at);
    places.normals.row(v) = sample.gradient.transpose();
    places.points_m.row(v) = (at - sample.distance_m * sample.gradient).transpose();
  }
  const Eigen::VectorXd force = state.contact_pressure_pa.cwiseProduct(state.contact_area_m2);
  const Eigen::VectorXd skin = CoupledLayer(*setup.coupled_tissue).lowering_m(places, force);
  double worst = 0.0;
  for (Eigen::Index v = 0; v < count; ++v)
    if (force(v) > 0.0) worst = std::max(worst, std::abs(skin(v) - state.indentation_m(v)));
  return worst;
}

TEST(CoupledTissue, SheetAndSkinFitTogetherAndForcesBalance) {
  for (const double poisson : {0.0, 0.45, 0.49}) {
    const InflationSetup setup = cuff_on_layer(25e3, poisson, 0.020);
    const LoadPath path = pressed(setup);
    ASSERT_FALSE(path.states.empty());
    const EquilibriumState& last = path.states.back();
    EXPECT_LT(worst_misfit_m(setup, path), 2.0 * TissueSettings{}.coupled_fit * last.indentation_m.maxCoeff())
        << poisson;
    EXPECT_LT(last.contact_force_n.colwise().sum().norm(), 1e-2 * force_of(last)) << poisson;
    InflationSetup plain = setup;
    plain.coupled_tissue.reset();
    const LoadPath foundation = pressed(plain);
    std::cout << "  nu " << poisson << ": force coupled " << force_of(last) << " N, foundation "
              << force_of(foundation.states.back()) << " N; factorisations " << path.factorisations << " and "
              << foundation.factorisations << "\n";
  }
}

TEST(CoupledTissue, ALayerThinAgainstTheContactPressesLikeItsFoundation) {
  const InflationSetup setup = cuff_on_layer(25e2, 0.0, 0.002);
  InflationSetup plain = setup;
  plain.coupled_tissue.reset();
  const LoadPath coupled = pressed(setup), foundation = pressed(plain);
  ASSERT_FALSE(coupled.states.empty() || foundation.states.empty());
  const double a = force_of(coupled.states.back()), b = force_of(foundation.states.back());
  std::cout << "  thin layer: force coupled " << a << " N, foundation " << b << " N\n";
  EXPECT_NEAR(a / b, 1.0, 0.01);
}

TEST(CoupledTissue, RefusesALayerThatIsNone) {
  InflationSetup setup = cuff_on_layer(25e3, 0.0, 0.020);
  setup.coupled_tissue->poisson = 0.6;
  const auto bulging = inflate(setup, {3.0 * kPa});
  ASSERT_FALSE(bulging);
  EXPECT_NE(bulging.problem().message.find("0.6"), std::string::npos);
  setup.coupled_tissue->poisson = 0.3;
  setup.coupled_tissue->depth_m.resize(3);
  const auto short_of = inflate(setup, {3.0 * kPa});
  ASSERT_FALSE(short_of);
  EXPECT_EQ(short_of.problem().kind, ProblemKind::kBadInput);
}

}  // namespace
}  // namespace wrapgauge
