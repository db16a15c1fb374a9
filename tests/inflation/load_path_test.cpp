#include "model/inflation/load_path.hpp"

#include <gtest/gtest.h>
#include <tbb/global_control.h>

#include <Eigen/Geometry>

#include "model/inflation/kept_closing.hpp"
#include "model/inflation/membrane_stress.hpp"
#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

double contact_force(const EquilibriumState& state) {
  return state.contact_pressure_pa.dot(state.contact_area_m2);
}

TEST(LoadPath, PressesHarderAtEveryStepAndBalancesSideways) {
  const auto path = inflate(small::closed_cuff(0.3, 0.006), {3.0 * kPa});
  ASSERT_TRUE(path) << path.problem().message;
  ASSERT_EQ(path->states.size(), 7u);
  for (std::size_t k = 1; k < path->states.size(); ++k) {
    EXPECT_GT(contact_force(path->states[k]), contact_force(path->states[k - 1]));
    EXPECT_NEAR(path->states[k].group_pressure_pa(0), 500.0 * static_cast<double>(k), 1e-6);
  }
  const EquilibriumState& last = path->states.back();
  EXPECT_LT(last.contact_force_n.colwise().sum().norm(), 1e-2 * contact_force(last));
}

TEST(LoadPath, ByVolumeReachesTheSameShapeAsByPressure) {
  const InflationSetup setup = small::closed_cuff(0.0, 0.006);
  const auto by_pressure = inflate(setup, {2.0 * kPa});
  ASSERT_TRUE(by_pressure) << by_pressure.problem().message;
  const Volume volume(by_pressure->states.back().group_volume_m3(0));
  const auto by_volume = inflate(setup, {volume});
  ASSERT_GT(volume / mL, 1.0);
  ASSERT_TRUE(by_volume) << by_volume.problem().message;
  EXPECT_NEAR(by_volume->states.back().group_pressure_pa(0), 2000.0, 20.0);
  EXPECT_NEAR(contact_force(by_volume->states.back()) / contact_force(by_pressure->states.back()), 1.0,
              0.005);
}

TEST(LoadPath, StopsBeforeASheetIsStretchedFurtherThanItsLawIsKnownFor) {
  InflationSetup setup = small::closed_cuff(0.3, 0.008);
  setup.skin_stretch_limit = setup.outer_stretch_limit = 1.12;
  for (const InflationTarget& asked : {InflationTarget(12.0 * kPa), InflationTarget(80.0 * mL)}) {
    const auto path = inflate(setup, {asked});
    ASSERT_TRUE(path) << path.problem().message;
    ASSERT_TRUE(path->limit_point);
    EXPECT_EQ(path->limit_point->kind, LimitKind::kOverstretched);
    const EquilibriumState& last = path->states.back();
    EXPECT_EQ(path->limit_point->volume.si(), last.group_volume_m3(0));
    const double most = sheet_stress(setup, path->sheet, last.positions_m).stretch_max.maxCoeff();
    EXPECT_LE(most, 1.12);
    EXPECT_GT(most, 1.11);
  }
}

TEST(LoadPath, DoesNotDependOnTheNumberOfThreads) {
  const InflationSetup setup = small::closed_cuff(0.3, 0.008);
  const auto run = [&](std::size_t threads) {
    const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, threads);
    return inflate(setup, {2.0 * kPa}).value().states.back().positions_m;
  };
  EXPECT_EQ(run(1), run(2));
}

TEST(LoadPath, FromAKeptClosingIsThePathThatClosesItself) {
  const InflationSetup setup = small::closed_cuff(0.3, 0.008);
  KeptClosing closing;
  const auto first = inflate(setup, {1.0 * kPa}, {}, silent_progress(), &closing);
  ASSERT_TRUE(first);
  ASSERT_TRUE(closing.get());
  const auto kept = inflate(setup, {2.0 * kPa}, {}, silent_progress(), &closing);
  const auto anew = inflate(setup, {2.0 * kPa});
  ASSERT_TRUE(kept && anew);
  EXPECT_LT(kept->factorisations, anew->factorisations);
  ASSERT_EQ(kept->states.size(), anew->states.size());
  for (std::size_t k = 0; k < kept->states.size(); ++k) {
    EXPECT_EQ(kept->states[k].positions_m, anew->states[k].positions_m);
    EXPECT_EQ(kept->states[k].contact_force_n, anew->states[k].contact_force_n);
  }
}

TEST(LoadPath, TurnedWithTheLimbGivesTheSamePressure) {
  const InflationSetup setup = small::closed_cuff(0.3, 0.008);
  InflationSetup turned = setup;
  const Eigen::AngleAxisd turn(1.1, Vec3::UnitZ());
  turned.start_m = setup.start_m * turn.toRotationMatrix().transpose();
  turned.start_outward = setup.start_outward * turn.toRotationMatrix().transpose();
  const auto a = inflate(setup, {2.0 * kPa}), b = inflate(turned, {2.0 * kPa});
  ASSERT_TRUE(a && b);
  const double difference =
      (a->states.back().contact_pressure_pa - b->states.back().contact_pressure_pa).lpNorm<Eigen::Infinity>();
  EXPECT_LT(difference, 0.01 * a->states.back().contact_pressure_pa.maxCoeff());
}

TEST(LoadPath, RefusesTargetsThatDoNotMatchTheInlets) {
  const auto path = inflate(small::closed_cuff(0.0), {});
  ASSERT_FALSE(path);
  EXPECT_EQ(path.problem().kind, ProblemKind::kBadInput);
  EXPECT_NE(path.problem().message.find("0 inflation targets"), std::string::npos);
}

TEST(LoadPath, RefusesAGroupOfChannelsAloneInOneSentence) {
  InflationSetup setup = small::closed_cuff(0.0);
  setup.flat.chamber_group.clear();
  setup.flat.channel_group = {GroupId{0}};
  for (FlatRegion& region : setup.flat.regions)
    if (region.kind == RegionKind::kChamber) region.kind = RegionKind::kChannel;
  const auto path = inflate(setup, {2.0 * kPa});
  ASSERT_FALSE(path);
  EXPECT_EQ(path.problem().kind, ProblemKind::kBadInput);
  EXPECT_NE(path.problem().message.find("Inlet 'inlet' feeds no chamber"), std::string::npos)
      << path.problem().message;
}

class CancelAtOnce : public Progress {
 public:
  bool cancelled() const override { return true; }
};

TEST(LoadPath, StopsWhenCancelled) {
  CancelAtOnce progress;
  const auto path = inflate(small::closed_cuff(0.0), {2.0 * kPa}, {}, progress);
  ASSERT_FALSE(path);
  EXPECT_EQ(path.problem().kind, ProblemKind::kCancelled);
}

}  // namespace
}  // namespace wrapgauge
