#include "app/picture/nice_axis.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

TEST(NiceAxis, EndsAtARoundNumberInRoundSteps) {
  const NiceAxis wide = nice_axis(3.2, 6), narrow = nice_axis(3.2, 2);
  EXPECT_DOUBLE_EQ(wide.step, 1.0);
  EXPECT_EQ(wide.steps, 4);
  EXPECT_EQ(wide.decimals, 0);
  EXPECT_DOUBLE_EQ(narrow.step, 2.0);
  EXPECT_EQ(narrow.steps, 2);
}

TEST(NiceAxis, WritesAsManyDecimalsAsAnyOfItsNumbersNeeds) {
  EXPECT_EQ(nice_axis(1.25, 5).decimals, 2);  // 0.25, 0.50 ...
  EXPECT_EQ(nice_axis(12.0, 5).decimals, 1);  // 2.5, 5.0 ...
  EXPECT_EQ(nice_axis(9.9, 1).decimals, 0);   // 10
  EXPECT_EQ(nice_axis(0.99, 1).decimals, 0);  // 1
  EXPECT_EQ(nice_axis(0.3, 3).decimals, 1);
}

TEST(NiceAxis, ReachesWhatIsAskedInNoMoreStepsThanAllowed) {
  for (const double least_top : {0.1, 0.37, 1.0, 2.5, 2.51, 19.0, 300.0})
    for (int most = 1; most <= 6; ++most) {
      const NiceAxis axis = nice_axis(least_top, most);
      EXPECT_GE(axis.top(), least_top * (1.0 - 1e-6));
      EXPECT_LE(axis.steps, most);
      EXPECT_LT(axis.top() - axis.step, least_top);
    }
}

TEST(RoundStep, IsTheShortestOfOneTwoAndFiveThatNeedsFewEnoughSteps) {
  EXPECT_DOUBLE_EQ(round_step(6000.0, 6.5, 100.0), 1000.0);
  EXPECT_DOUBLE_EQ(round_step(6000.0, 5.0, 100.0), 2000.0);
  EXPECT_DOUBLE_EQ(round_step(45.0, 10.0, 0.01), 5.0);
  EXPECT_DOUBLE_EQ(round_step(3.0, 50.0, 100.0), 100.0);  // never shorter than the least
}

TEST(ScaleLength, IsTheLongestRoundOneThatFits) {
  EXPECT_DOUBLE_EQ(scale_length_mm(1000.0, 150.0), 100.0);  // 1 mm is 1 pixel
  EXPECT_DOUBLE_EQ(scale_length_mm(3000.0, 110.0), 20.0);
  EXPECT_DOUBLE_EQ(scale_length_mm(200000.0, 110.0), 0.5);
}

}  // namespace
}  // namespace wrapgauge
