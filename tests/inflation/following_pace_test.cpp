// How far what follows the shape does so, step by step.
#include "model/inflation/following_pace.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

TEST(FollowingPace, StaysWholeWhileTheBalanceGetsBetter) {
  FollowingPace pace;
  double out_of_balance = 10.0;
  for (int iteration = 0; iteration < 60; ++iteration, out_of_balance *= 0.95)
    pace.watch(iteration, out_of_balance);
  EXPECT_EQ(pace.share(), 1.0);
  EXPECT_FALSE(pace.slow());
}

TEST(FollowingPace, GetsSmallerWhileStepsGoRoundInCirclesAndNeverNothing) {
  FollowingPace pace;
  double before = pace.share();
  int slower = 0;
  for (int iteration = 0; iteration < 200; ++iteration) {
    pace.watch(iteration, iteration % 2 == 0 ? 1.0 : 1.5);
    EXPECT_LE(pace.share(), before);
    slower += pace.share() < before;
    before = pace.share();
  }
  EXPECT_GE(slower, 4);
  EXPECT_TRUE(pace.slow());
  EXPECT_GT(pace.share(), 0.0);
  EXPECT_EQ(pace.without_better(199), 199);
}

TEST(FollowingPace, CountsFromTheLastBetterBalance) {
  FollowingPace pace;
  pace.watch(0, 1.0);
  pace.watch(7, 0.5);
  pace.watch(9, 0.45);  // hardly better
  EXPECT_EQ(pace.without_better(10), 3);
}

}  // namespace
}  // namespace wrapgauge
