#include "model/study/ceiling.hpp"

#include <gtest/gtest.h>

#include "model/core/file.hpp"
#include "model/study/ceiling_report.hpp"
#include "tests/study/small_band.hpp"

namespace wrapgauge {
namespace {

Result<Ceiling> ceiling_of(const Plan& plan, double spread_factor = 1.0) {
  CeilingOptions options;
  options.spread_factor = spread_factor;
  return find_ceiling(plan, small_band::body(), small_band::resources(), options);
}

const Result<Ceiling>& ceiling_of_six_kpa() {
  static const Result<Ceiling> ceiling = ceiling_of(small_band::plan(6.0 * kPa));
  return ceiling;
}

// The limit's share at an inflation, solved apart from the search.
double share_at(const Plan& plan, InflationTarget target) {
  const Body body = body_of_plan(plan, small_band::body()).value();
  const auto study = StudyCase::make(plan, body, small_band::resources(), mesh_of_plan(plan)).value();
  const auto solved = study.inflate_to({target}, silent_progress());
  EXPECT_TRUE(solved.ok()) << (solved.ok() ? "" : solved.problem().message);
  if (!solved) return 0.0;
  const LoadPath& path = *solved;
  return study.read(path).nearest.share;
}

TEST(Ceiling, OfAPlanThatWasSolvedBeforeIsTheSame) {
  const Plan plan = small_band::plan(6.0 * kPa);
  const Body body = body_of_plan(plan, small_band::body()).value();
  const auto study = StudyCase::make(plan, body, small_band::resources(), mesh_of_plan(plan)).value();
  const auto path = study.inflate_to(study.targets(), silent_progress()).value();
  const auto after = find_ceiling(plan, body, small_band::resources(), {study, path}, {}).value();
  const Ceiling& apart = ceiling_of_six_kpa().value();
  ASSERT_EQ(after.together.inlets.size(), 1u);
  EXPECT_EQ(after.together.inlets[0].gauge, apart.together.inlets[0].gauge);
  EXPECT_EQ(after.together.at.nearest.share, apart.together.at.nearest.share);
  EXPECT_EQ(after.together.solves, apart.together.solves);
  EXPECT_EQ(after.plan_within, apart.plan_within);
}

TEST(Ceiling, IsWithinTheLimitsAndFivePercentAboveItIsNot) {
  const Plan plan = small_band::plan(6.0 * kPa);
  const auto& ceiling = ceiling_of_six_kpa();
  ASSERT_TRUE(ceiling.ok()) << ceiling.problem().message;
  const InletCeiling& together = ceiling->together;
  ASSERT_EQ(together.inlets.size(), 1u) << ceiling_words(*ceiling).front();
  EXPECT_EQ(together.inlets[0].inlet, "valve");
  EXPECT_EQ(together.stop, CeilingStop::kLimit);
  EXPECT_TRUE(together.confirmed());
  EXPECT_FALSE(together.at.nearest.sentence.empty());
  const Pressure answer = together.inlets[0].gauge;
  EXPECT_NEAR(answer / kPa, 6.0 * together.at.inflation, 1e-6);
  EXPECT_LE(share_at(plan, answer), 1.0 + 1e-6);
  EXPECT_GT(share_at(plan, answer * 1.05), 1.0);
  EXPECT_TRUE(ceiling->alone.empty());  // a single inlet
}

TEST(Ceiling, DoesNotDependOnHowMuchThePlanAsksFor) {
  const auto low = ceiling_of(small_band::plan(1.5 * kPa));
  const auto& high = ceiling_of_six_kpa();
  ASSERT_TRUE(low.ok() && high.ok());
  EXPECT_NEAR(low->together.inlets[0].gauge / kPa, high->together.inlets[0].gauge / kPa,
              0.02 * (high->together.inlets[0].gauge / kPa));
}

TEST(Ceiling, ReliefStaysWithinItsShareOfTheLimitAndItsCap) {
  const auto& ceiling = ceiling_of_six_kpa();
  ASSERT_TRUE(ceiling.ok() && ceiling->relief);
  ASSERT_EQ(ceiling->relief->settings.size(), 1u);
  const Pressure setting = ceiling->relief->settings[0].highest;
  EXPECT_GE(setting, ceiling->together.inlets[0].gauge * 0.99);
  EXPECT_LE(setting, 10.0 * kPa);
  EXPECT_LE(ceiling->relief->place_share, 1.25);
  EXPECT_GT(ceiling->relief->place_share, 0.8) << "so low a valve says nothing";
}

TEST(Ceiling, TheSpreadOfInputsLowersIt) {
  const Plan plan = small_band::plan(6.0 * kPa);
  const auto& without = ceiling_of_six_kpa();
  const auto with = ceiling_of(plan, 1.4);
  ASSERT_TRUE(without.ok() && with.ok());
  EXPECT_LT(with->together.inlets[0].gauge, without->together.inlets[0].gauge * 0.95);
  EXPECT_LE(1.4 * share_at(plan, with->together.inlets[0].gauge), 1.0 + 1e-6);
}

TEST(Ceiling, AFillVolumeIsScaledFromWhatTheClosedBandHolds) {
  const Plan plan = small_band::plan(12.0 * mL);
  const auto ceiling = ceiling_of(plan);
  ASSERT_TRUE(ceiling.ok()) << ceiling.problem().message;
  ASSERT_EQ(ceiling->together.inlets.size(), 1u);
  EXPECT_TRUE(ceiling->together.inlets[0].by_volume);
  EXPECT_TRUE(ceiling->together.confirmed());
  EXPECT_LE(share_at(plan, ceiling->together.inlets[0].volume), 1.0 + 0.01);
}

TEST(Ceiling, ATightClosureLeavesNoRoomAndSaysWhatPresses) {
  const auto ceiling = ceiling_of(small_band::plan(2.0 * kPa, 0.25));
  ASSERT_TRUE(ceiling.ok()) << ceiling.problem().message;
  EXPECT_EQ(ceiling->together.stop, CeilingStop::kAlreadyAbove);
  EXPECT_TRUE(ceiling->together.inlets.empty());
  EXPECT_FALSE(ceiling->relief);
  const std::string words = ceiling_words(*ceiling).front();
  EXPECT_NE(words.find("Deflated and only fastened"), std::string::npos) << words;
  EXPECT_NE(words.find("loosen the closure"), std::string::npos) << words;
}

TEST(Ceiling, NothingToScaleIsSaid) {
  const auto ceiling = ceiling_of(small_band::plan(0.0 * kPa));
  ASSERT_FALSE(ceiling.ok());
  EXPECT_NE(ceiling.problem().message.find("asked for nothing"), std::string::npos);
}

TEST(CeilingWords, AreReadBackAndRefusedForOtherInputs) {
  const auto& ceiling = ceiling_of_six_kpa();
  ASSERT_TRUE(ceiling.ok());
  const small_band::Folder folder("ceiling");
  const auto file = folder.path() / "ceiling.json";
  ASSERT_TRUE(write_file_atomically(file, ceiling_json(*ceiling, "small band", "hash")).ok());
  const auto answer = read_ceiling(file, "hash");
  ASSERT_TRUE(answer.ok()) << answer.problem().message;
  EXPECT_EQ(answer->words, ceiling_words(*ceiling));
  EXPECT_EQ(answer->brief, ceiling_brief(*ceiling));
  EXPECT_EQ(answer->relief, relief_brief(*ceiling));
  ASSERT_TRUE(answer->relief);
  EXPECT_NE(answer->relief->find("for inlet 'valve'"), std::string::npos);
  const auto stale = read_ceiling(file, "another");
  ASSERT_FALSE(stale.ok());
  EXPECT_NE(stale.problem().message.find("stale"), std::string::npos);
}

TEST(CeilingWords, NameEachKindOfLimitPoint) {
  const auto& ceiling = ceiling_of_six_kpa();
  ASSERT_TRUE(ceiling.ok());
  const auto json_at = [&](LimitKind kind) {
    Ceiling at = *ceiling;
    at.together.stop = CeilingStop::kLimitPoint;
    at.together.limit_kind = kind, at.together.limit_chambers = "'row'";
    return ceiling_json(at, "small band", "hash");
  };
  EXPECT_NE(json_at(LimitKind::kRunsAway).find("\"runs_away_in\": \"'row'\""), std::string::npos);
  EXPECT_NE(json_at(LimitKind::kOverstretched).find("\"overstretched_in\": \"'row'\""), std::string::npos);
  EXPECT_NE(json_at(LimitKind::kFolds).find("\"folds_in\": \"'row'\""), std::string::npos);
  EXPECT_NE(json_at(LimitKind::kFolds).find("\"stop\": \"sheet folds\""), std::string::npos);
}

TEST(CeilingWords, ShowAnExcessHoweverSmallAndRoundDownBelowIt) {
  EXPECT_EQ(percent_text(0.996), "99 %");
  EXPECT_EQ(percent_text(1.0), "100 %");
  EXPECT_EQ(percent_text(1.0004), "100.04 %");
  EXPECT_EQ(percent_text(1.18), "118 %");
}

}  // namespace
}  // namespace wrapgauge
