#include "model/study/aim.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "model/study/aim_report.hpp"
#include "tests/study/small_band.hpp"

namespace wrapgauge {
namespace {

Plan quick(Plan plan) {
  plan.solver.steps = 1;
  return plan;
}

Result<Aim> aim_at(const Plan& plan, const std::vector<AimTarget>& targets) {
  return aim(plan, small_band::body(), small_band::resources(), targets);
}

// Chamber means at the plan's own inflation.
std::vector<Pressure> means_of(const Plan& plan) {
  const Body body = body_of_plan(plan, small_band::body()).value();
  const auto study = StudyCase::make(plan, body, small_band::resources(), mesh_of_plan(plan)).value();
  const auto path = study.inflate_to(study.targets(), silent_progress()).value();
  std::vector<Pressure> means;
  for (const ChamberFigures& chamber : study.read(path).figures.chambers) means.push_back(chamber.mean);
  return means;
}

TEST(Aim, ComesBackToTheInflationThatGaveTheTarget) {
  const Pressure known = 3.0 * kPa;
  const Pressure mean = means_of(quick(small_band::plan(known)))[0];
  const auto found =
      aim_at(quick(small_band::plan(8.0 * mL)), {{"pad", mean}});  // whatever the plan fills it by
  ASSERT_TRUE(found.ok()) << found.problem().message;
  EXPECT_TRUE(found->as_drawn.reached);
  EXPECT_FALSE(found->split);
  EXPECT_NEAR(found->as_drawn.chambers[0].mean / kPa, mean / kPa, aim_tolerance(mean) / kPa);
  EXPECT_NEAR(found->as_drawn.inlets[0].gauge / known, 1.0, 0.05);
}

// One inlet feeds both pads: it cannot press twice as hard under one of them.
TEST(Aim, NamesTheSplitWhenOneInletCannotDoIt) {
  const Plan plan = quick(small_band::two_chambers(2.0 * kPa));
  const std::vector<Pressure> even = means_of(plan);
  const auto found = aim_at(plan, {{"pad", even[0]}, {"far pad", even[1] * 1.6}});
  ASSERT_TRUE(found.ok()) << found.problem().message;
  EXPECT_FALSE(found->as_drawn.reached);
  EXPECT_EQ(found->as_drawn.inlets.size(), 1u);
  ASSERT_TRUE(found->as_drawn.worst().wanted);
  EXPECT_GT(std::abs((found->as_drawn.worst().mean - *found->as_drawn.worst().wanted).si()),
            aim_tolerance(*found->as_drawn.worst().wanted).si());
  ASSERT_TRUE(found->split);
  EXPECT_TRUE(found->split->reached);
  ASSERT_EQ(found->split->inlets.size(), 2u);
  EXPECT_LT(found->split->inlets[0].gauge, found->split->inlets[1].gauge);
  EXPECT_EQ(found->closed_channels, std::vector<std::string>{"joint"});
  const std::vector<std::string> words = aim_words(*found);
  EXPECT_NE(words[0].find("Not reached as drawn"), std::string::npos);
  const std::string split = "Reached with 2 inlets, with the channels 'joint' fused shut";
  EXPECT_TRUE(std::any_of(words.begin(), words.end(), [&](const std::string& sentence) {
    return sentence.find(split) != std::string::npos;
  }));
}

TEST(Aim, OwnsUpWhenTheClosedBandAlreadyPressesHarder) {
  const auto found = aim_at(quick(small_band::plan(2.0 * kPa, 0.2)), {{"pad", 0.2 * kPa}});
  ASSERT_TRUE(found.ok()) << found.problem().message;
  EXPECT_FALSE(found->as_drawn.reached);
  EXPECT_FALSE(found->split);
  EXPECT_NEAR(found->as_drawn.inlets[0].gauge / kPa, 0.0, 0.05);
  EXPECT_GT(found->as_drawn.chambers[0].mean, 0.25 * kPa);
}

std::string refusal(const Plan& plan, const std::vector<AimTarget>& targets) {
  const auto found = aim_at(plan, targets);
  return found ? "" : found.problem().message;
}

TEST(Aim, RefusesTargetsThatMakeNoSense) {
  const Plan plan = small_band::plan(2.0 * kPa);
  EXPECT_NE(refusal(plan, {{"lid", 1.0 * kPa}}).find("it has 'pad'"), std::string::npos);
  EXPECT_NE(refusal(plan, {{"pad", 1.0 * kPa}, {"pad", 2.0 * kPa}}).find("twice"), std::string::npos);
  EXPECT_NE(refusal(plan, {{"pad", 0.0 * kPa}}).find("above 0"), std::string::npos);
  EXPECT_NE(refusal(plan, {}).find("no target"), std::string::npos);
}

TEST(Aim, RefusesAProfileThatRisesTowardsTheTrunkRoundALimb) {
  Plan plan = small_band::plan(2.0 * kPa);
  plan.layout.outline_m = small_band::rectangle(0, 0, 0.270, 0.090);
  plan.layout.chambers.push_back({"upper", small_band::rectangle(0.060, 0.050, 0.050, 0.030), {}, {}});
  const std::string message = refusal(plan, {{"pad", 1.0 * kPa}, {"upper", 1.5 * kPa}});
  EXPECT_NE(message.find("nearer the trunk"), std::string::npos) << message;
}

}  // namespace
}  // namespace wrapgauge
