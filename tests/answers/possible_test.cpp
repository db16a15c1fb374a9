// No result is one that cannot be.
#include <gtest/gtest.h>

#include "tests/answers/many_plans.hpp"

namespace wrapgauge::answers {
namespace {

TEST(PossibleAnswer, HasNoChamberBelowZero) {
  int chambers = 0;
  for (const AskedPlan& asked : many_plans()) {
    const auto& estimate = answer_of(asked);
    if (!estimate) continue;
    for (const ChamberFigures& chamber : estimate->figures.chambers) {
      ++chambers;
      EXPECT_GE(chamber.volume.si(), 0.0) << asked.words;
    }
    for (const EquilibriumState& state : estimate->path.states)
      EXPECT_GE(state.group_volume_m3.minCoeff(), 0.0) << asked.words;
  }
  EXPECT_GE(chambers, 100);
}

// The rule must not be kept by giving no answers.
TEST(PossibleAnswer, IsThereForNearlyEveryPlan) {
  int answered = 0;
  for (const AskedPlan& asked : many_plans()) answered += answer_of(asked) ? 1 : 0;
  EXPECT_GE(answered, static_cast<int>(many_plans().size()) - 2);
}

}  // namespace
}  // namespace wrapgauge::answers
