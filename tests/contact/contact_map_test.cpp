#include "model/contact/contact_map.hpp"

#include <gtest/gtest.h>

#include "hand_made.hpp"

namespace wrapgauge {
namespace {

TEST(SkinMap, CarriesALinearPressureFromTheLayoutToTheSkin) {
  hand_made::Worn worn = hand_made::flat_pad(10, 0.04);
  EquilibriumState& state = worn.path.states.back();
  state.contact_pressure_pa = 1e5 * worn.setup.flat.vertices_m.col(0).array() + 500.0;
  const SkinMap map = skin_map(worn.body, worn.setup, worn.path, state);
  int covered = 0;
  for (Eigen::Index v = 0; v < map.skin.vertices_m.rows(); ++v) {
    const Vec3 point = map.skin.vertices_m.row(v);
    const double margin = std::min({point.x(), point.y(), 0.04 - point.x(), 0.04 - point.y()});
    if (margin > 1e-6) {
      EXPECT_NEAR(map.pressure_pa[v], 1e5 * point.x() + 500.0, 1e-6);
      ++covered;
    } else if (margin < -1e-3) {
      EXPECT_EQ(map.pressure_pa[v], 0.0);
    }
  }
  EXPECT_GT(covered, 400);  // about 2 mm apart over 16 cm2
}

TEST(ContactMap, ReachesTheSkinThroughAnIndentation) {
  hand_made::Worn worn = hand_made::flat_pad(10, 0.04);
  EquilibriumState& state = worn.path.states.back();
  state.positions_m.col(2).setConstant(-8e-3);
  state.indentation_m.setConstant(8e-3);
  state.contact_pressure_pa.setConstant(3e3);
  const ContactMap map = contact_map(worn.setup, worn.path, state);
  EXPECT_NEAR(skin_map(worn.body, worn.setup, worn.path, state).pressure_pa.maxCoeff(), 3e3, 1e-6);
  EXPECT_NEAR(map.mean_1cm2_pa.minCoeff(), 3e3, 1e-6);
}

TEST(SkinMap, IsZeroWhereTheSheetStandsOff) {
  hand_made::Worn worn = hand_made::flat_pad(6, 0.04);
  worn.path.states.back().positions_m.col(2).setConstant(20e-3);
  worn.path.states.back().contact_pressure_pa.setConstant(3e3);
  const SkinMap map = skin_map(worn.body, worn.setup, worn.path, worn.path.states.back());
  EXPECT_EQ(map.pressure_pa.cwiseAbs().maxCoeff(), 0.0);
}

}  // namespace
}  // namespace wrapgauge
