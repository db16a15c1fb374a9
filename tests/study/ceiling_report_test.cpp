// What a ceiling says, from one made by hand: units, rounding and the proportion of air pushed in.
#include "model/study/ceiling_report.hpp"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "model/study/inlet_scale.hpp"
#include "tests/study/small_band.hpp"

namespace wrapgauge {
namespace {

// Two inlets; nothing in it is a round number.
Ceiling made_by_hand() {
  Ceiling ceiling;
  ceiling.edge = 4.0 * mm;
  ceiling.model_factor = 1.7;
  ceiling.spread_factor = 1.25;
  InletCeiling& together = ceiling.together;
  together.stop = CeilingStop::kLimit;
  together.inlets = {{"near", false, std::nullopt, 3.178 * kPa, 21.47 * mL},
                     {"far", true, 17.29 * mL, 2.345 * kPa, 32.58 * mL}};
  together.at = {0.873, true, {0.996, "pad", "The pad presses.", Severity::kWarn}, 2.71 * kPa};
  together.above =
      CeilingCheck{0.917, true, {1.031, "pad", "The pad presses harder.", Severity::kAboveLimit}, 2.83 * kPa};
  ceiling.relief = ReliefCheck{{{"near", 3.96 * kPa}, {"far", 2.345 * kPa}}, 1.187, "the rule", {}};
  return ceiling;
}

TEST(CeilingJson, EveryPressureInMillimetresOfMercuryIsItsKilopascals) {
  const auto json = nlohmann::json::parse(ceiling_json(made_by_hand(), "plan", "hash"));
  int pairs = 0;
  for (const auto& inlets : {json.at("together").at("inlets"), json.at("relief").at("inlets")})
    for (const auto& inlet : inlets) {
      ASSERT_TRUE(inlet.contains("gauge_kPa") && inlet.contains("gauge_mmHg"));
      EXPECT_NEAR(inlet["gauge_mmHg"].get<double>(), 7.50062 * inlet["gauge_kPa"].get<double>(), 2e-3);
      ++pairs;
    }
  EXPECT_EQ(pairs, 4);
  EXPECT_NEAR(json["together"]["inlets"][0]["gauge_kPa"].get<double>(), 3.178, 1e-9);
  EXPECT_NEAR(json["together"]["inlets"][1]["pushed_mL"].get<double>(), 17.29, 1e-9);
  EXPECT_NEAR(json["together"]["inlets"][1]["volume_mL"].get<double>(), 32.58, 1e-9);
  EXPECT_EQ(json["together"]["inlets"][1]["by"], "air pushed in");
}

// 3.178 kPa is 23.84 mmHg: 3.1 and 23, not 3.2 and 24; 3.96 kPa is 29.70 mmHg.
TEST(CeilingWords, NeverRoundAnInflationOrAReliefSettingUp) {
  const std::vector<std::string> words = ceiling_words(made_by_hand());
  ASSERT_GE(words.size(), 4u);
  EXPECT_NE(words[0].find("'near' 3.1 kPa (23 mmHg), holding 21.4 mL"), std::string::npos) << words[0];
  EXPECT_NE(words[0].find("'far' 17.2 mL of air pushed in, at 2.3 kPa (17 mmHg)"), std::string::npos)
      << words[0];
  EXPECT_NE(words[3].find("no higher than 3.9 kPa (29 mmHg) for inlet 'near'"), std::string::npos)
      << words[3];
}

TEST(CeilingWords, SayWhichFactorsCount) {
  const std::string last = ceiling_words(made_by_hand()).back();
  EXPECT_NE(last.find("multiplied by 1.7, the model factor, and again by 1.25 for the spread"),
            std::string::npos)
      << last;
}

TEST(CeilingWords, SayThatNothingIsConfirmedWhenNothingAboveIsAboveALimit) {
  Ceiling ceiling = made_by_hand();
  EXPECT_TRUE(ceiling.together.confirmed());
  ceiling.together.above->nearest = {0.999, "pad", "The pad presses.", Severity::kWarn};
  EXPECT_FALSE(ceiling.together.confirmed());
  EXPECT_NE(ceiling_words(ceiling)[2].find("NOT CONFIRMED"), std::string::npos);
  ceiling.together.above->equilibrium = false;
  EXPECT_TRUE(ceiling.together.confirmed());
  ceiling.together.at.nearest.share = 1.001;
  EXPECT_FALSE(ceiling.together.confirmed());
}

// 40 mL at 5 kPa and 20 mL beside it hold 60 x 106.325 / 101.325 = 62.961 mL of room air; 3 + 20 mL were
// there before, so 39.961 mL were pushed, 1.998 times the 20 mL asked for.
TEST(InletScale, CountsTheAirThatWasInChamberAndDeadVolumeBeforeThePush) {
  const Plan plan = small_band::plan(TrappedAir{20.0 * mL, 20.0 * mL});
  const auto study = StudyCase::make(plan, small_band::body(), small_band::resources(), mesh_of_plan(plan));
  ASSERT_TRUE(study.ok()) << study.problem().message;
  InletScale scale(*study, std::nullopt);
  EquilibriumState closed;
  closed.group_volume_m3 = Eigen::VectorXd::Constant(1, 3e-6);
  scale.closed_at(closed);
  const LimitPoint point{GroupId(0), 5.0 * kPa, 40.0 * mL};
  EXPECT_NEAR(scale.inflation_at(point), (60.0 * 106.325 / 101.325 - 23.0) / 20.0, 1e-9);
  const auto targets = scale.at(0.5);
  ASSERT_EQ(targets.size(), 1u);
  const auto* air = std::get_if<TrappedAir>(&targets[0]);
  ASSERT_TRUE(air);
  EXPECT_NEAR(air->pushed / mL, 10.0, 1e-12);
  EXPECT_NEAR(air->dead / mL, 20.0, 1e-12);
}

// What the closed band holds by itself is no inflation: half-way from 4 to 12 mL is 8 mL.
TEST(InletScale, ScalesAVolumeFromWhatTheClosedBandHolds) {
  const Plan plan = small_band::plan(12.0 * mL);
  const auto study = StudyCase::make(plan, small_band::body(), small_band::resources(), mesh_of_plan(plan));
  ASSERT_TRUE(study.ok()) << study.problem().message;
  InletScale scale(*study, std::nullopt);
  EquilibriumState closed;
  closed.group_volume_m3 = Eigen::VectorXd::Constant(1, 4e-6);
  scale.closed_at(closed);
  const auto targets = scale.at(0.5);
  ASSERT_EQ(targets.size(), 1u);
  const auto* volume = std::get_if<Volume>(&targets[0]);
  ASSERT_TRUE(volume);
  EXPECT_NEAR(*volume / mL, 8.0, 1e-9);
  EXPECT_NEAR(scale.inflation_at({GroupId(0), 5.0 * kPa, 10.0 * mL}), 0.75, 1e-9);
}

}  // namespace
}  // namespace wrapgauge
