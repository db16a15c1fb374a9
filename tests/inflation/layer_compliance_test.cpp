#include "model/inflation/layer_compliance.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>

#include "model/inflation/coupled_layer.hpp"
#include "model/material/tissue.hpp"

namespace wrapgauge {
namespace {

// Nodes of a square lattice on a plane.
SkinPlaces plane_lattice(int half_count, double spacing_m) {
  const int side = 2 * half_count + 1;
  SkinPlaces places{Points3(side * side, 3), Points3(side * side, 3),
                    Eigen::VectorXd::Constant(side * side, spacing_m * spacing_m)};
  for (int i = 0; i < side; ++i)
    for (int j = 0; j < side; ++j) {
      places.points_m.row(i * side + j) << (i - half_count) * spacing_m, (j - half_count) * spacing_m, 0.0;
      places.normals.row(i * side + j) << 0.0, 0.0, 1.0;
    }
  return places;
}

TEST(LayerCompliance, IsAHalfSpaceForShortWavesAndAConfinedFoundationForLongOnes) {
  for (const double poisson : {0.0, 0.3, 0.45, 0.49}) {
    const LayerCompliance layer(poisson);
    EXPECT_NEAR(layer.half_space_share(12.0), 1.0, 1e-6);
    // C(0) = 2 h / E* s(x)/x against 1/K = (1+nu)(1-2nu) h / ((1-nu) E).
    const double wide = 2.0 * (1.0 - poisson * poisson) * layer.half_space_share(1e-4) / 1e-4;
    const double confined = foundation_modulus(1.0 * Pa, poisson, Length(1.0)).value().si();
    EXPECT_NEAR(wide * confined, 1.0, 1e-5) << poisson;
  }
  EXPECT_LT(LayerCompliance(0.5).half_space_share(1e-3) / 1e-3, 1e-5);  // cannot be squeezed
}

TEST(CoupledLayer, UniformPressureOverAWidePlaceIsTheConfinedFoundationWhateverTheMesh) {
  for (const double poisson : {0.0, 0.3, 0.45})
    for (const double spacing : {0.3, 0.6, 1.0, 1.5, 2.5}) {  // of the depth
      const double depth = 0.010, young = 30e3;
      const SkinPlaces places = plane_lattice(static_cast<int>(6.0 / spacing), spacing * depth);
      const Eigen::Index count = places.area_m2.size();
      const CoupledLayer layer({young, poisson, Eigen::VectorXd::Constant(count, depth)});
      const double lowering = layer.lowering_m(places, 1000.0 * places.area_m2)(count / 2);
      const double foundation = foundation_modulus(Pressure(young), poisson, Length(depth)).value().si();
      EXPECT_NEAR(lowering * foundation / 1000.0, 1.0, 0.035) << "nu " << poisson << ", spacing " << spacing;
      std::cout << "  wide contact, nu " << poisson << ", mesh " << spacing
                << " depths: lowering / foundation " << lowering * foundation / 1000.0 << "\n";
    }
}

// On a limb that is longer than a force reaches, with a depth that varies: by the formula written out, over
// every pair.
TEST(CoupledLayer, SumsOverWhatIsWithinReachAsOverAllPairs) {
  const double radius = 0.04, young = 25e3, poisson = 0.3;
  const int around = 24, along = 40;
  SkinPlaces places{Points3(around * along, 3), Points3(around * along, 3),
                    Eigen::VectorXd::Constant(around * along, 5e-5)};
  Eigen::VectorXd depth(around * along), force(around * along);
  for (int k = 0; k < around * along; ++k) {
    const double angle = 2.0 * M_PI * (k % around) / around, z = 0.01 * (k / around);
    places.normals.row(k) << std::cos(angle), std::sin(angle), 0.0;
    places.points_m.row(k) << radius * std::cos(angle), radius * std::sin(angle), z;
    depth(k) = 0.004 + 0.006 * k / (around * along);
    force(k) = k % 3 == 0 ? 0.0 : 0.1 + 0.01 * (k % 7);
  }
  const Eigen::VectorXd lowering = CoupledLayer({young, poisson, depth}).lowering_m(places, force);
  const LayerCompliance layer(poisson);
  const double modulus = young / (1.0 - poisson * poisson);
  int beyond = 0;
  for (int i = 0; i < around * along; i += 37) {
    double sum = 0.0;
    for (int j = 0; j < around * along; ++j) {
      const double h = std::sqrt(depth(i) * depth(j)), area = places.area_m2(j);
      const double r = std::max(1.2 * std::sqrt(area / M_PI),
                                surface_distance_m(places.points_m.row(i), places.normals.row(i),
                                                   places.points_m.row(j), places.normals.row(j)));
      const double q = r / h, own_q = std::sqrt(area / M_PI) / h;
      beyond += i != j && force(j) > 0.0 && q >= LayerCompliance::kReach;
      const double apart =
          q >= LayerCompliance::kReach
              ? 0.0
              : (1.0 / q - layer.depth_correction(q) +
                 area / (8.0 * M_PI * h * h) * (1.0 / (q * q * q) + layer.depth_correction_bend(q))) /
                    (M_PI * modulus * h);
      const double own = 2.0 * h * (own_q - layer.depth_correction_moment(own_q)) / (modulus * area);
      sum += force(j) * (i == j ? own : apart);
    }
    EXPECT_NEAR(lowering(i), sum, 1e-12 * std::abs(sum)) << i;
  }
  EXPECT_GT(beyond, 1000);
}

TEST(CoupledLayer, AStifferPlaceSinksLessUnderTheSameForce) {
  const SkinPlaces places = plane_lattice(3, 0.005);
  const Eigen::Index count = places.area_m2.size(), middle = count / 2;
  const Eigen::VectorXd depth = Eigen::VectorXd::Constant(count, 0.02);
  Eigen::VectorXd force = Eigen::VectorXd::Zero(count);
  force(middle) = 0.5;
  const CoupledLayer plain({25e3, 0.3, depth}), doubled({50e3, 0.3, depth}),
      by_factor({25e3, 0.3, depth, Eigen::VectorXd::Constant(count, 2.0)});
  EXPECT_LT((by_factor.lowering_m(places, force) - doubled.lowering_m(places, force)).cwiseAbs().maxCoeff(),
            1e-15);
  EXPECT_NEAR(by_factor.spring_pa_per_m(0), 2.0 * plain.spring_pa_per_m(0), 1e-6);
  Eigen::VectorXd factor = Eigen::VectorXd::Ones(count);
  factor(middle) = 4.0;
  const Eigen::VectorXd before = plain.lowering_m(places, force),
                        after = CoupledLayer({25e3, 0.3, depth, factor}).lowering_m(places, force);
  EXPECT_NEAR(after(middle), before(middle) / 4.0, 1e-12);
  EXPECT_NEAR(after(middle + 1), before(middle + 1) / 2.0, 1e-12);  // geometric mean of 4 and 1
  EXPECT_TRUE(tissue_layer_problem({25e3, 0.3, depth, Eigen::VectorXd::Ones(3)}));
  factor(0) = 0.0;
  EXPECT_TRUE(tissue_layer_problem({25e3, 0.3, depth, factor}));
}

TEST(CoupledLayer, DistanceAlongACylinderIsTheUnrolledOne) {
  const double radius = 0.04;
  const auto on = [&](double angle, double z) {
    return Vec3(radius * std::cos(angle), radius * std::sin(angle), z);
  };
  const auto normal = [](double angle) { return Vec3(std::cos(angle), std::sin(angle), 0.0); };
  for (const double angle : {0.01, 0.5, 1.5, 3.0})
    for (const double z : {0.0, 0.02})
      EXPECT_NEAR(surface_distance_m(on(0.2, 0.0), normal(0.2), on(0.2 + angle, z), normal(0.2 + angle)),
                  std::hypot(radius * angle, z), 1e-9);
}

}  // namespace
}  // namespace wrapgauge
