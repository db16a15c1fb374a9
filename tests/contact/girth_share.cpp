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
TEST(PressedShareOfGirth, IsZeroWhereNothingTouches) {
  EXPECT_EQ(share_of(-1.0), 0.0);
}

}  // namespace
}  // namespace wrapgauge
