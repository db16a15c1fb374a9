// The device that is drawn is the one that was solved.
#include "app/desk/views/moment.hpp"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <limits>

#include "app/desk/views/body_scene.hpp"
#include "tests/desk_views/small_estimate.hpp"

namespace wrapgauge {
namespace {

class DrawnDevice : public testing::Test, public WithShown {
 protected:
  void SetUp() override { ASSERT_TRUE(show_all_states(two_chamber_estimate())); }
  const EquilibriumState& solved(int state) const {
    return shown.estimate()->path.states[static_cast<std::size_t>(state)];
  }
  const SheetMesh& sheet() const { return shown.estimate()->path.sheet; }
  double most_air_m(double filling) const {
    const auto moment = moment_at(shown, filling);
    return device_faces(shown.estimate()->setup, sheet(), moment->positions_m).air_m.maxCoeff();
  }
};

TEST_F(DrawnDevice, HasItsPointsWhereTheSolvedStateHasThem) {
  for (int state = 0; state < shown.state_count(); ++state) {
    const ScenePart part = contact_part(shown, state, BodyLook::kDevice);
    ASSERT_TRUE(part.surface && part.outer);
    ASSERT_EQ(part.outer->points_m.rows(), shown.estimate()->setup.flat.vertices_m.rows());
    for (Eigen::Index v = 0; v < part.outer->points_m.rows(); ++v) {
      const auto at = static_cast<std::size_t>(v);
      ASSERT_EQ(part.outer->points_m.row(v), solved(state).positions_m.row(sheet().outer_node[at])) << state;
      ASSERT_EQ(part.surface->points_m.row(v), solved(state).positions_m.row(sheet().skin_node[at])) << state;
    }
  }
}

// Divergence theorem: what the drawn outer sheet and the drawn skin side enclose is the volume that the
// solver reports, since they coincide wherever they are sealed.
TEST_F(DrawnDevice, EnclosesTheVolumeOfTheSolvedState) {
  for (int state = 0; state < shown.state_count(); ++state) {
    const ScenePart part = contact_part(shown, state, BodyLook::kDevice);
    const auto under = [&](const Points3& points_m) {
      double volume_m3 = 0.0;
      for (Eigen::Index t = 0; t < part.outer->triangles.rows(); ++t) {
        const auto corner = [&](int k) -> Vec3 { return points_m.row(part.outer->triangles(t, k)); };
        volume_m3 += corner(0).dot(corner(1).cross(corner(2))) / 6.0;
      }
      return volume_m3;
    };
    EXPECT_NEAR(under(part.outer->points_m) - under(part.surface->points_m),
                solved(state).group_volume_m3.sum(), 1e-9 + 1e-6 * solved(state).group_volume_m3.sum())
        << state;
  }
}

TEST_F(DrawnDevice, SwellsWhileItFills) {
  double before = -1.0;
  for (double filling = 0.0; filling <= shown.state_count() - 1; filling += 0.25) {
    EXPECT_GT(most_air_m(filling), before) << filling;
    before = most_air_m(filling);
  }
}

TEST_F(DrawnDevice, LiesHalfwayBetweenTwoStatesHalfwayInTime) {
  const auto half = moment_at(shown, 1.5), low = moment_at(shown, 1.0), high = moment_at(shown, 2.0);
  ASSERT_TRUE(half && low && high);
  EXPECT_LT((half->positions_m - 0.5 * (low->positions_m + high->positions_m)).norm(), 1e-15);
  EXPECT_LT((half->pressure_pa - 0.5 * (low->pressure_pa + high->pressure_pa)).norm(), 1e-9);
  EXPECT_EQ(low->positions_m, solved(1).positions_m) << "a recorded state is drawn as it was solved";
  EXPECT_FALSE(moment_at(shown, shown.state_count()));
  EXPECT_FALSE(moment_at(shown, -0.5));
}

// Else the skin at rest, which it presses in, would hide it.
TEST_F(DrawnDevice, IsLiftedByWhatItPressesTheSkinIn) {
  const int last = shown.state_count() - 1;
  const ScenePart part = contact_part(shown, last, BodyLook::kDevice);
  EXPECT_GT(part.surface->lift_m, solved(last).indentation_m.maxCoeff());
  EXPECT_GE(part.outer->lift_m, part.surface->lift_m);
}

TEST_F(DrawnDevice, NamesTheSpotThatIsPressedMost) {
  const int last = shown.state_count() - 1;
  const ScenePart part = contact_part(shown, last, BodyLook::kDevice);
  ASSERT_TRUE(part.hottest);
  Eigen::Index most = 0;
  shown.contact(last)->map.on_layout_pa.maxCoeff(&most);
  EXPECT_EQ(part.hottest->point_m.transpose(), part.surface->points_m.row(most));
}

TEST_F(DrawnDevice, OnTheSkinAloneThereIsNoOuterSheet) {
  const ScenePart part = contact_part(shown, shown.state_count() - 1, BodyLook::kSkin);
  EXPECT_FALSE(part.outer);
  EXPECT_FALSE(part.air_line);
}

}  // namespace
}  // namespace wrapgauge
