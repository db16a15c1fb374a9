#include "model/pipeline/fastening_pressure.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

// T / R on a rigid body, K u for a ring that hardly gives, the balance K u = S (e - u/R) / R between.
TEST(FasteningPressure, BalancesARingOnAFoundation) {
  const double strain = 0.11, r_m = 0.04, s = 2000.0;
  EXPECT_NEAR(ring_pressure(strain, LineTension(s), r_m * metre, 1e15).si(), s * strain / r_m, 1e-4);
  EXPECT_NEAR(ring_pressure(strain, LineTension(1e12), r_m * metre, 1e6).si(), 1e6 * strain * r_m, 1.0);
  const double k = 1.25e6, p = ring_pressure(strain, LineTension(s), r_m * metre, k).si();
  EXPECT_NEAR(p, s * (strain - p / k / r_m) / r_m, 1e-9 * p);
  EXPECT_EQ(ring_pressure(-0.05, LineTension(s), r_m * metre, k).si(), 0.0);
}

}  // namespace
}  // namespace wrapgauge
