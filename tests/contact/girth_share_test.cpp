#include "model/contact/girth_share.hpp"

#include <gtest/gtest.h>

#include "hand_made.hpp"

namespace wrapgauge {
namespace {

double share_of(double pressed_angle) {
  const hand_made::Worn worn = hand_made::ring(0.04, 0.05, 1.0, 144, 6);
  const TriangleMesh side = skin_side(worn.setup, worn.path.sheet, worn.path.states.back().positions_m);
  Eigen::VectorXd pressure = Eigen::VectorXd::Zero(side.vertices_m.rows());
  const double length = worn.setup.flat.vertices_m.col(0).maxCoeff();
  for (Eigen::Index v = 0; v < pressure.size(); ++v)
    if (worn.setup.flat.vertices_m(v, 0) / length * 2.0 * std::numbers::pi <= pressed_angle)
      pressure[v] = 2e3;
  return pressed_share_of_girth(worn.body, pressure_samples(side, pressure));
}

TEST(PressedShareOfGirth, IsOneForARing) {
  EXPECT_EQ(share_of(7.0), 1.0);
}
TEST(PressedShareOfGirth, IsAQuarterForAQuarterRing) {
  EXPECT_NEAR(share_of(std::numbers::pi / 2), 0.25, 0.03);
}
// Half of a ring is pressed with `low` times the mean of what touches, the other half so that the mean is 1
// kPa.
double share_with_light_half(double low) {
  const hand_made::Worn worn = hand_made::ring(0.04, 0.05, 1.0, 144, 6);
  const TriangleMesh side = skin_side(worn.setup, worn.path.sheet, worn.path.states.back().positions_m);
  const double length = worn.setup.flat.vertices_m.col(0).maxCoeff();
  Eigen::VectorXd pressure(side.vertices_m.rows());
  for (Eigen::Index v = 0; v < pressure.size(); ++v)
    pressure[v] = 1e3 * (worn.setup.flat.vertices_m(v, 0) < 0.5 * length ? 2.0 - low : low);
  return pressed_share_of_girth(worn.body, pressure_samples(side, pressure));
}

TEST(PressedShareOfGirth, CountsWhatIsPressedWithMoreThanATwentiethOfTheMeanAndNoLess) {
  EXPECT_EQ(share_with_light_half(0.06), 1.0);
  EXPECT_NEAR(share_with_light_half(0.04), 0.5, 0.03);
}
TEST(PressedShareOfGirth, IsZeroWhereNothingTouches) {
  EXPECT_EQ(share_of(-1.0), 0.0);
}

}  // namespace
}  // namespace wrapgauge
