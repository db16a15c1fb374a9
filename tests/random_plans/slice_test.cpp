// A slice of the random plans in docs/random-plans.md, with the same generator.
#include <gtest/gtest.h>

#include "tests/random_plans/outcome.hpp"

namespace wrapgauge::random_plans {
namespace {

const Resources& shipped_resources() {
  static const Resources resources =
      read_resources(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources").value();
  return resources;
}

class RandomPlans : public testing::TestWithParam<unsigned> {};

TEST_P(RandomPlans, ReachTheAskedLoadInBalanceOrANamedLimitPoint) {
  int turned_down = 0;
  const RandomPlan random = random_plan(GetParam(), shipped_resources(), turned_down);
  const Outcome outcome = outcome_of(random, shipped_resources());
  EXPECT_NE(outcome.end, End::kOutOfBalance) << random.words << ": " << outcome.message;
  EXPECT_NE(outcome.end, End::kNotClosed) << random.words << ": " << outcome.message;
  EXPECT_NE(outcome.end, End::kGaveUp) << random.words << ": " << outcome.message;
}

TEST(RandomPlan, OfOneSeedIsOnePlan) {
  int turned_down = 0;
  const RandomPlan one = random_plan(7, shipped_resources(), turned_down),
                   two = random_plan(7, shipped_resources(), turned_down),
                   other = random_plan(8, shipped_resources(), turned_down);
  EXPECT_EQ(one.words, two.words);
  EXPECT_NE(one.words, other.words);
}

INSTANTIATE_TEST_SUITE_P(Slice, RandomPlans, testing::Range(1u, 7u));
// Ends at a pressure maximum, whose contact forces once were read with the areas of the shape beyond it.
INSTANTIATE_TEST_SUITE_P(AtAPressureMaximum, RandomPlans, testing::Values(40u));
// Laid crushed onto the pole of a sphere, which no tangent in single precision came off.
INSTANTIATE_TEST_SUITE_P(LaidCrushed, RandomPlans, testing::Values(390u));

}  // namespace
}  // namespace wrapgauge::random_plans
