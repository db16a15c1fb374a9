// A scan brings no bony or nerve sites, and not knowing them is no reason for a laxer limit.
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/answers/many_plans.hpp"

namespace wrapgauge::answers {
namespace {

TEST(SharedBodies, AreJudgedByTheBonyRowUntilTheirSitesAreKnown) {
  if (scanned_plans().empty()) GTEST_SKIP() << "../shared is not there: no scan was tried";
  for (const AskedPlan& asked : scanned_plans()) {
    const auto& estimate = answer_of(asked);
    ASSERT_TRUE(estimate) << asked.words;
    EXPECT_FALSE(estimate->limit_inputs.sites_known) << asked.words;
    for (const LimitRow* row :
         rows_on_layout(estimate->limits, estimate->limit_inputs, estimate->setup,
                        estimate->path.states.back(), estimate->path.sheet, estimate->figures))
      EXPECT_EQ(row->site, SiteClass::kBony) << asked.words;
    EXPECT_TRUE(std::any_of(estimate->findings.begin(), estimate->findings.end(), [](const Finding& finding) {
      return english(finding.sentence).find("Nobody has said where the bones") != std::string::npos;
    })) << asked.words;
    LimitInputs confirmed = estimate->limit_inputs;
    confirmed.sites_known = true;
    EXPECT_GE(estimate->worst(), judged(asked.plan, *estimate, confirmed).worst()) << asked.words;
  }
}

}  // namespace
}  // namespace wrapgauge::answers
