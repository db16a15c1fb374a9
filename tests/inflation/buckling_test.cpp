// When a sheet would rather fold than stay smooth.
// Euler's column (any text on strength of materials): a strip whose ends are held but free to turn folds at a
// strain of pi^2 t^2 / (12 L^2); as a wide plate, up to 1 / (1 - nu^2) = 4/3 of that where its bending is
// held sideways and its pull is not.
#include <gtest/gtest.h>

#include <cmath>
#include <iostream>

#include "model/inflation/newton.hpp"
#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

constexpr double kLength = 0.060, kThickness = 0.003;

// A flat strip pushed together along x by `strain`, free to widen.
bool strip_keeps_its_shape(double strain) {
  InflationSetup setup = small::plain_sheet(kLength, 0.020, kThickness);
  for (Eigen::Index v = 0; v < setup.flat.vertices_m.rows(); ++v) {
    const double x = setup.flat.vertices_m(v, 0);
    if (x < 1e-6 || x > kLength - 1e-6) setup.held.push_back(static_cast<int>(v));
  }
  EquilibriumSystem system(setup, {});
  Factorisation factorisation = make_factorisation(system.tangent()).value();
  Points3 shape = system.start_m();
  shape.col(0) *= 1.0 - strain;
  shape.col(1) *= 1.0 + 0.5 * strain;
  return keeps_its_shape(system, factorisation, {}, shape).value();
}

TEST(Buckling, OfAStripComesAtEulersStrain) {
  const double euler = M_PI * M_PI * kThickness * kThickness / (12.0 * kLength * kLength);
  double low = 0.0, high = 4.0 * euler;
  ASSERT_TRUE(strip_keeps_its_shape(low));
  ASSERT_FALSE(strip_keeps_its_shape(high));
  for (int halving = 0; halving < 8; ++halving) {
    const double middle = 0.5 * (low + high);
    (strip_keeps_its_shape(middle) ? low : high) = middle;
  }
  std::cout << "  folds at " << low / euler << " of Euler's strain\n";
  EXPECT_GT(low, 0.9 * euler);
  EXPECT_LT(low, 1.4 * euler);
}

}  // namespace
}  // namespace wrapgauge
