#include "model/limits/relief.hpp"

#include <gtest/gtest.h>

#include <cstdlib>

#include "model/core/rounded_down.hpp"
#include "tests/contact/hand_made.hpp"

namespace wrapgauge {
namespace {

// A soft place held for a session: limit 3 kPa, factor 1.5, so 2 kPa of contact take all of it.
class ReliefSettings : public testing::Test {
 protected:
  void SetUp() override {
    const auto limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json");
    ASSERT_TRUE(limits.ok());
    limits_ = *limits;
    inputs_.part = BodyPart::kForearm;
    inputs_.sites_known = true;
    worn_ = hand_made::flat_pad(4, 0.04);
    worn_.setup.layout.inlets = {{"pump", Vec2(0.02, 0.02)}};
    deflated_ = worn_.path.states.front();
    worn_.path.states.clear();
  }
  // One more recorded state, pressed everywhere alike.
  void record(Pressure gauge, Pressure contact) {
    EquilibriumState state = deflated_;
    state.group_pressure_pa.setConstant(gauge.si());
    state.contact_pressure_pa.setConstant(contact.si());
    worn_.path.states.push_back(state);
  }
  std::vector<InletRelief> settings() const {
    ContactMap map;
    map.mean_1cm2_pa = worn_.path.states.back().contact_pressure_pa;
    return relief_settings(limits_, inputs_, worn_.setup, worn_.path, map, figures_);
  }
  double setting_kpa() const {
    const auto all = settings();
    return all.size() == 1 ? all.front().highest / kPa : -1.0;
  }
  LimitSet limits_;
  LimitInputs inputs_;
  hand_made::Worn worn_;
  EquilibriumState deflated_;
  ContactFigures figures_;
};

// Shares 0, 0.5 and 2: 1.25 lies half-way between the last two, at 3 kPa.
TEST_F(ReliefSettings, LieWhereThePathTakesTheAllowedShareOfTheLimit) {
  record({}, {});
  record(2.0 * kPa, 1.0 * kPa);
  record(4.0 * kPa, 4.0 * kPa);
  EXPECT_NEAR(setting_kpa(), 3.0, 1e-9);
}

// Shares 0, 0 and 1: the last step gains 1 in half the inflation, so 1.25 is met an eighth above it.
TEST_F(ReliefSettings, FollowTheLastStepBeyondThePath) {
  record({}, {});
  record(2.0 * kPa, {});
  record(4.0 * kPa, 2.0 * kPa);
  EXPECT_NEAR(setting_kpa(), 4.5, 1e-9);
}

// Fastening alone presses almost as hard: shares 1.05 and 1.1. In proportion to the inflation 1.25 is met at
// 1 + 0.15 / 1.1 of it, 4.545 kPa; the last step would say four times the inflation.
TEST_F(ReliefSettings, TakeContactToGrowAtLeastInProportion) {
  record({}, 2.1 * kPa);
  record(4.0 * kPa, 2.2 * kPa);
  EXPECT_NEAR(setting_kpa(), 4.5, 1e-9);
}

TEST_F(ReliefSettings, AreNoneWhereFasteningAloneTakesTheAllowedShare) {
  record({}, 2.6 * kPa);
  record(4.0 * kPa, 3.0 * kPa);
  EXPECT_TRUE(settings().empty());
}

// Far beyond the path the skin may take all the air presses with: 1.25 x 3 kPa; and never above the cap.
TEST_F(ReliefSettings, NeverPassTheirCapNorFollowThePathFar) {
  record({}, {});
  record(0.5 * kPa, 0.01 * kPa);
  EXPECT_NEAR(setting_kpa(), 3.7, 1e-9);
  worn_.path.states.clear();
  record({}, {});
  record(30.0 * kPa, 0.01 * kPa);
  EXPECT_NEAR(setting_kpa(), 10.0, 1e-9);
  figures_.share_of_girth = 1.0;
  EXPECT_NEAR(setting_kpa(), 5.3, 1e-9);
}

TEST_F(ReliefSettings, AreLowerOnABodyWhoseSitesNobodyKnows) {
  record({}, {});
  record(4.0 * kPa, 2.0 * kPa);
  const double known = setting_kpa();
  inputs_.sites_known = false;
  EXPECT_LT(setting_kpa(), known - 0.5);
  EXPECT_GT(setting_kpa(), 0.0);
}

TEST_F(ReliefSettings, OfATestObjectAreNone) {
  record({}, {});
  record(4.0 * kPa, 2.0 * kPa);
  inputs_.part = BodyPart::kTestObject;
  EXPECT_TRUE(settings().empty());
}

// Both are raised together: 4 and 2 kPa keep their proportion, 1.25 of the limit is met an eighth above.
TEST_F(ReliefSettings, AreOneForEachInletInThePlansProportion) {
  FlatMesh& flat = worn_.setup.flat;
  for (std::size_t t = 0; t < flat.regions.size(); ++t) flat.regions[t].part = t % 8 < 4 ? 0 : 1;
  flat.chamber_group = {GroupId(0), GroupId(1)};
  flat.group_inlet = {InletId(0), InletId(1)};
  worn_.setup.layout.inlets = {{"left", Vec2(0.01, 0.02)}, {"right", Vec2(0.03, 0.02)}};
  deflated_.group_pressure_pa = Eigen::Vector2d::Zero();
  record({}, {});
  record(2.0 * kPa, {});
  record(4.0 * kPa, 2.0 * kPa);
  worn_.path.states[1].group_pressure_pa[1] = 1e3;
  worn_.path.states[2].group_pressure_pa[1] = 2e3;
  const auto all = settings();
  ASSERT_EQ(all.size(), 2u);
  EXPECT_EQ(all[0].inlet, "left");
  EXPECT_NEAR(all[0].highest / kPa, 4.5, 1e-9);
  EXPECT_EQ(all[1].inlet, "right");
  EXPECT_NEAR(all[1].highest / kPa, 2.2, 1e-9);  // 2.25, rounded down
  EXPECT_EQ(relief_text(all), "4.5 kPa (33 mmHg) for inlet 'left', 2.2 kPa (16 mmHg) for inlet 'right'");
}

TEST(SettingText, IsNeverAboveThePressureInEitherUnit) {
  for (int i = 1; i <= 400; ++i) {
    const Pressure pressure = 0.0237 * i * kPa;
    const std::string text = setting_text(pressure);
    const double kpa = std::strtod(text.c_str(), nullptr);
    const double mmhg = std::strtod(text.c_str() + text.find('(') + 1, nullptr);
    EXPECT_LE(kpa * kPa, pressure + 1e-6 * Pa) << text;
    EXPECT_LE(mmhg * mmHg, kpa * kPa + 1e-6 * Pa) << text;
    EXPECT_GT(kpa * kPa, pressure - 0.1 * kPa) << text;
  }
  EXPECT_EQ(setting_text(3.0 * kPa), "3.0 kPa (22 mmHg)");
}

}  // namespace
}  // namespace wrapgauge
