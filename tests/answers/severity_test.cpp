// Knowing less, pressing harder or holding for longer never makes an answer laxer.
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/answers/many_plans.hpp"

namespace wrapgauge::answers {
namespace {

void expect_never_laxer(const Estimate& before, const Estimate& after, const std::string& words) {
  EXPECT_GE(after.worst(), before.worst()) << words;
}

// Another solve scatters by a per cent or two with the last digits: what lies nearer than that above a limit
// or a stop says nothing of a rule.
bool is_clear(const Estimate& estimate) {
  return std::none_of(estimate.findings.begin(), estimate.findings.end(), [](const Finding& finding) {
    return finding.severity >= Severity::kAboveLimit && finding.share_of_limit > 1.0 &&
           finding.share_of_limit < 1.03;
  });
}

void expect_still_above(const Estimate& before, const Estimate& after, const std::string& words) {
  if (before.worst() >= Severity::kAboveLimit && is_clear(before)) {
    EXPECT_GE(after.worst(), before.worst()) << words;
  }
}

double highest_share(const Estimate& estimate) {
  const Eigen::VectorXd share = shares(estimate);
  return share.size() > 0 ? share.maxCoeff() : 0.0;
}

class Answer : public testing::Test {
 protected:
  // Over every plan that has an answer; says how many had.
  template <class Check>
  void over_all(const Check& check) {
    int answered = 0;
    for (const AskedPlan& asked : many_plans())
      if (const auto& estimate = answer_of(asked)) ++answered, check(asked, *estimate);
    EXPECT_GE(answered, 45) << "too few plans come to a result for this to say anything";
  }
};

TEST_F(Answer, IsNeverLaxerWhenTheSitesAreUnknown) {
  over_all([](const AskedPlan& asked, const Estimate& estimate) {
    LimitInputs known = estimate.limit_inputs, unknown = known;
    known.sites_known = true;
    unknown.sites_known = false;
    unknown.bony_sites.clear();
    expect_never_laxer(judged(asked.plan, estimate, known), judged(asked.plan, estimate, unknown),
                       asked.words);
  });
}

// Over bone a device also presses harder. Every third plan on a form that has sites: each costs a solve.
TEST_F(Answer, IsNeverLaxerOnTheSameBodyWithoutItsSites) {
  int tried = 0, pressed = 0;
  for (const AskedPlan& asked : many_plans()) {
    if (asked.body.bony_sites.empty() || ++tried % 3 != 1) continue;
    const auto& known = answer_of(asked);
    if (!known || known->path.limit_point) continue;
    Body bare = asked.body;
    bare.bony_sites.clear();
    const auto unknown = solve(asked.plan, bare);
    if (!unknown) continue;
    EXPECT_FALSE(unknown->limit_inputs.sites_known);
    expect_still_above(*known, *unknown, asked.words);
    // What hardly presses leaves less than the solver's tolerance to compare.
    if (highest_share(*known) < 0.1) continue;
    EXPECT_GE(highest_share(*unknown), 0.95 * highest_share(*known)) << asked.words;
    ++pressed;
  }
  EXPECT_GE(pressed, 5);
}

TEST_F(Answer, IsNeverLaxerWhereMorePlacesAreBony) {
  over_all([](const AskedPlan& asked, const Estimate& estimate) {
    LimitInputs fewer = estimate.limit_inputs;
    fewer.sites_known = true;
    LimitInputs more = fewer;
    more.bony_sites.push_back({"another site", estimate.figures.peak_at_m, 20.0 * mm, 4.0 * mm});
    expect_never_laxer(judged(asked.plan, estimate, fewer), judged(asked.plan, estimate, more), asked.words);
  });
}

TEST_F(Answer, IsNeverLaxerForALongerUse) {
  over_all([](const AskedPlan& asked, const Estimate& estimate) {
    LimitInputs pulse = estimate.limit_inputs, held = pulse, session = pulse;
    pulse.use = UsePattern::kPulse;
    held.use = UsePattern::kShortHold;
    session.use = UsePattern::kSustained;
    pulse.session = held.session = session.session = std::nullopt;
    const Estimate shortest = judged(asked.plan, estimate, pulse),
                   middle = judged(asked.plan, estimate, held);
    expect_never_laxer(shortest, middle, asked.words);
    expect_never_laxer(middle, judged(asked.plan, estimate, session), asked.words);
  });
}

TEST_F(Answer, IsNeverLaxerForALongerHold) {
  over_all([](const AskedPlan& asked, const Estimate& estimate) {
    if (!asked.plan.session || estimate.limit_inputs.programme.empty()) return;
    LimitInputs longer = estimate.limit_inputs;
    for (auto& steps : longer.programme)
      for (ProgrammeStep& step : steps)
        if (step.level > 0.0) step.hold = 1.5 * step.hold;
    expect_never_laxer(estimate, judged(asked.plan, estimate, longer), asked.words);
  });
}

TEST_F(Answer, IsNeverLaxerWhenThePartIsUnknownOrOneThatBreathes) {
  over_all([](const AskedPlan& asked, const Estimate& estimate) {
    LimitInputs limb = estimate.limit_inputs, chest = limb, unknown = limb;
    limb.part = BodyPart::kForearm;
    chest.part = BodyPart::kChest;
    chest.cleared_by.reset();
    unknown.part.reset();
    const Estimate on_limb = judged(asked.plan, estimate, limb),
                   on_chest = judged(asked.plan, estimate, chest);
    expect_never_laxer(on_limb, on_chest, asked.words);
    expect_never_laxer(on_chest, judged(asked.plan, estimate, unknown), asked.words);
    if (estimate.figures.share_of_girth >= estimate.limits.circumferential_share) {
      EXPECT_EQ(on_chest.worst(), Severity::kStop) << asked.words;
    }
  });
}

// Every third: each costs a solve.
TEST_F(Answer, IsNeverLaxerForMoreInflation) {
  int compared = 0;
  for (std::size_t i = 0; i < many_plans().size(); i += 3) {
    const AskedPlan& asked = many_plans()[i];
    const auto& before = answer_of(asked);
    if (!before || before->path.limit_point) continue;
    Plan more = asked.plan;
    for (InletProgram& program : more.inflation) {
      if (auto* pressure = std::get_if<Pressure>(&program.target)) *pressure = 1.3 * *pressure;
      if (auto* volume = std::get_if<Volume>(&program.target)) *volume = 1.3 * *volume;
    }
    if (const auto after = solve(more, asked.body))
      expect_still_above(*before, *after, asked.words), ++compared;
  }
  EXPECT_GE(compared, 10);
}

TEST_F(Answer, IsNeverLaxerForLessTissueOverBone) {
  int compared = 0;
  for (std::size_t i = 1; i < many_plans().size(); i += 3) {
    const AskedPlan& asked = many_plans()[i];
    const auto& before = answer_of(asked);
    if (!before || before->path.limit_point) continue;
    Body thinner = asked.body;
    const auto vertices = thinner.surface.vertices_m.rows();
    if (thinner.tissue_depth_m.size() != vertices)
      thinner.tissue_depth_m = Eigen::VectorXd::Constant(vertices, before->tissue.depth.si());
    thinner.tissue_depth_m *= 0.7;
    if (const auto after = solve(asked.plan, thinner))
      expect_still_above(*before, *after, asked.words), ++compared;
  }
  EXPECT_GE(compared, 10);
}

}  // namespace
}  // namespace wrapgauge::answers
