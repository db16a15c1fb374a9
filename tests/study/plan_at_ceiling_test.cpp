// What a ceiling and the relief settings promise, held against the estimate of the plan that is set to them.
#include <gtest/gtest.h>

#include "model/pipeline/pipeline.hpp"
#include "model/study/ceiling.hpp"
#include "model/study/ceiling_report.hpp"
#include "tests/study/small_band.hpp"

namespace wrapgauge {
namespace {

Estimate estimate_of(const Plan& plan, const Body& body = small_band::body()) {
  auto made = estimate(plan, body, small_band::resources(), {.mesh_error = false, .comparisons = false});
  EXPECT_TRUE(made.ok()) << (made.ok() ? "" : made.problem().message);
  return made.ok() ? std::move(made).value() : Estimate{};
}

Ceiling answer_of(const Plan& plan, const Body& body = small_band::body()) {
  CeilingOptions options;
  options.alone = false;
  auto found = find_ceiling(plan, body, small_band::resources(), options);
  EXPECT_TRUE(found.ok()) << (found.ok() ? "" : found.problem().message);
  return found.ok() ? std::move(found).value() : Ceiling{};
}

std::string worst_words(const Estimate& estimate) {
  std::string words;
  for (const Finding& finding : estimate.findings)
    if (finding.severity >= Severity::kAboveLimit) words += english(finding.sentence) + "\n";
  for (const Hazard& hazard : estimate.hazards)
    if (hazard.severity >= Severity::kAboveLimit)
      words += english(hazard.name) + ": " + english(hazard.sentence) + "\n";
  return words;
}

Plan with_session(Plan plan, Time length, Time hold, Time off) {
  plan.session = Session{length, hold, off, Time()};
  return plan;
}

// A second chamber, fed by an inlet of its own.
Plan two_inlets() {
  Plan plan = small_band::plan(6.0 * kPa);
  plan.layout.chambers.push_back({"far pad", small_band::rectangle(0.130, 0.010, 0.070, 0.030), {}, {}});
  plan.layout.inlets.push_back({"far valve", {0.165, 0.025}});
  plan.inflation.push_back({"far valve", 3.0 * kPa, {}});
  return plan;
}

struct Named {
  const char* name;
  Plan plan;
};

std::vector<Named> plans_above_their_ceiling() {
  Plan sustained = small_band::plan(6.0 * kPa);
  sustained.use = UsePattern::kSustained;
  Plan valve = small_band::plan(6.0 * kPa);
  valve.supply.relief = 40.0 * kPa;
  valve.supply.tubing = Tubing{600.0 * mm, 2.0 * mm};
  Plan slow = small_band::plan(6.0 * kPa);
  slow.supply.tubing = Tubing{1.0 * metre, 0.9 * mm};
  return {
      {"held for a minute", small_band::plan(6.0 * kPa)},
      {"held for a session", sustained},
      {"an exposure", with_session(small_band::plan(6.0 * kPa), 9.0 * minute, 60.0 * second, 120.0 * second)},
      {"a valve that opens too late", valve},
      {"a tube that vents slowly", slow},
      {"by volume", small_band::plan(12.0 * mL)},
      {"by a push", small_band::plan(TrappedAir{20.0 * mL, 5.0 * mL})},
      {"two inlets", two_inlets()}};
}

TEST(PlanAtCeiling, EndsWithNothingAboveALimit) {
  for (const auto& [name, plan] : plans_above_their_ceiling()) {
    EXPECT_GE(estimate_of(plan).worst(), Severity::kAboveLimit) << name << ": nothing to lower";
    const Ceiling ceiling = answer_of(plan);
    const auto set = plan_at_ceiling(plan, ceiling.together);
    ASSERT_TRUE(set) << name << ": " << ceiling_words(ceiling).front();
    const Estimate at = estimate_of(*set);
    EXPECT_LE(at.worst(), Severity::kWarn) << name << ": " << worst_words(at);
    EXPECT_FALSE(ceiling.plan_within) << name;
  }
}

// What is written is what is printed: tenths of a kilopascal or of a millilitre.
TEST(PlanAtCeiling, AsksForRoundSettings) {
  const Plan plan = two_inlets();
  const auto set = plan_at_ceiling(plan, answer_of(plan).together);
  ASSERT_TRUE(set);
  for (const InletProgram& program : set->inflation) {
    const double tenths = std::get<Pressure>(program.target) / (0.1 * kPa);
    EXPECT_NEAR(tenths, std::round(tenths), 1e-6) << program.inlet;
    EXPECT_GT(tenths, 0.5) << program.inlet;
  }
}

TEST(ReliefSettings, OfTheCeilingAreThoseOfTheEstimate) {
  for (const auto& [name, plan] : plans_above_their_ceiling()) {
    const Ceiling ceiling = answer_of(plan);
    ASSERT_TRUE(ceiling.relief) << name;
    EXPECT_EQ(ceiling.relief->settings, estimate_of(plan).relief) << name;
  }
}

// Every valve of the supply stuck open at once.
TEST(ReliefSettings, KeepEveryPlaceWithinTheRulesShareOfItsLimit) {
  for (const auto& [name, plan] : plans_above_their_ceiling()) {
    Plan stuck = plan;
    for (const InletRelief& relief : estimate_of(plan).relief)
      for (InletProgram& program : stuck.inflation)
        if (program.inlet == relief.inlet) program.target = relief.highest;
    const Estimate at = estimate_of(stuck);
    for (const Finding& finding : at.findings)
      if (finding.model_factor && finding.where != "exposure") {
        EXPECT_LE(finding.share_of_limit, 1.25) << name << ": " << english(finding.sentence);
      }
  }
}

TEST(InletRelief, OfAnInletThatIsNotThereIsRefusedByName) {
  Plan plan = small_band::plan(1.0 * kPa);
  plan.supply.inlet_relief["valv"] = 2.0 * kPa;
  const auto study = StudyCase::make(plan, body_of_plan(plan, small_band::body()).value(),
                                     small_band::resources(), mesh_of_plan(plan));
  ASSERT_FALSE(study.ok());
  EXPECT_NE(study.problem().message.find("'valv'"), std::string::npos) << study.problem().message;
}

TEST(Ceiling, OfASessionThatIsTooLongIsNoneAndSaysThatItIsTime) {
  const Plan plan = with_session(small_band::plan(6.0 * kPa), 600.0 * minute, 60.0 * second, 120.0 * second);
  const Ceiling ceiling = answer_of(plan);
  EXPECT_EQ(ceiling.together.stop, CeilingStop::kAlreadyAbove);
  EXPECT_TRUE(ceiling.together.inlets.empty());
  EXPECT_FALSE(plan_at_ceiling(plan, ceiling.together));
  const std::string words = ceiling_words(ceiling).front();
  EXPECT_NE(words.find("time, not pressure"), std::string::npos) << words;
}

// Pressed for longer than the row allows: only what counts as rested may be held so long.
TEST(Ceiling, OfAHoldThatIsTooLongIsNamedByTime) {
  const Plan plan = with_session(small_band::plan(6.0 * kPa), 8.0 * minute, 8.0 * minute, Time());
  const Ceiling ceiling = answer_of(plan);
  std::string all;
  for (const std::string& words : ceiling_words(ceiling)) all += words + "\n";
  EXPECT_NE(all.find("time, not pressure"), std::string::npos) << all;
  if (const auto set = plan_at_ceiling(plan, ceiling.together)) {
    EXPECT_LE(estimate_of(*set).worst(), Severity::kWarn);
  }
}

TEST(Ceiling, OfAHotFillingIsNone) {
  Plan plan = small_band::plan(6.0 * kPa);
  plan.filling = {Medium::kWater, 60.0, 10.0 * minute};
  const Ceiling ceiling = answer_of(plan);
  EXPECT_EQ(ceiling.together.stop, CeilingStop::kAlreadyAbove);
  EXPECT_EQ(ceiling.together.at.nearest.severity, Severity::kStop);
  EXPECT_NE(ceiling_words(ceiling).front().find("Heat or cold"), std::string::npos);
}

// The bony row holds on a body whose sites nobody marked; with someone's word for it the soft one may.
TEST(Ceiling, IsNoHigherOnABodyWhoseSitesNobodyKnows) {
  Plan unknown = small_band::plan(6.0 * kPa);
  unknown.use = UsePattern::kSustained;
  Plan known = unknown;
  known.sites_confirmed = SitesConfirmed{"someone", "2026-11-29", "felt along the limb"};
  const Ceiling strict = answer_of(unknown), lax = answer_of(known);
  ASSERT_FALSE(strict.together.inlets.empty() || lax.together.inlets.empty());
  EXPECT_LT(strict.together.inlets[0].gauge, lax.together.inlets[0].gauge);
}

}  // namespace
}  // namespace wrapgauge
