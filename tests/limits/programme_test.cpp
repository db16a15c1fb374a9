#include "model/limits/programme.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

// 60 s on, 120 s off, 9 minutes: three rounds of 180 s.
TEST(Programme, OfHoldsAndRestsRepeatsUntilTheSessionEnds) {
  const Session session{9.0 * minute, 60.0 * second, 120.0 * second, Time()};
  const auto levels = level_over_session(session_steps(session), session.length);
  for (int round = 0; round < 3; ++round) {
    EXPECT_DOUBLE_EQ(level_at(levels, (180.0 * round + 1.0) * second), 1.0);
    EXPECT_DOUBLE_EQ(level_at(levels, (180.0 * round + 59.0) * second), 1.0);
    EXPECT_DOUBLE_EQ(level_at(levels, (180.0 * round + 61.0) * second), 0.0);
    EXPECT_DOUBLE_EQ(level_at(levels, (180.0 * round + 179.0) * second), 0.0);
  }
  EXPECT_DOUBLE_EQ(levels.back().at / second, 540.0);
  EXPECT_DOUBLE_EQ(levels.back().level, 0.0);
}

// Up in 10 s, held 20 s, half level reached in 5 s and held 5 s.
TEST(Programme, RampsAreStraight) {
  const std::vector<ProgrammeStep> steps{{1.0, 10.0 * second, 20.0 * second},
                                         {0.5, 5.0 * second, 5.0 * second}};
  const auto levels = level_over_session(steps, 40.0 * second);
  EXPECT_DOUBLE_EQ(level_at(levels, 0.0 * second), 0.0);
  EXPECT_DOUBLE_EQ(level_at(levels, 4.0 * second), 0.4);
  EXPECT_DOUBLE_EQ(level_at(levels, 25.0 * second), 1.0);
  EXPECT_DOUBLE_EQ(level_at(levels, 32.5 * second), 0.75);
  EXPECT_DOUBLE_EQ(level_at(levels, 39.0 * second), 0.5);
}

TEST(Programme, CutShortByTheEndOfTheSessionKeepsItsSlope) {
  const std::vector<ProgrammeStep> steps{{1.0, 10.0 * second, 20.0 * second}};
  const auto levels = level_over_session(steps, 5.0 * second);
  ASSERT_GE(levels.size(), 3u);
  EXPECT_DOUBLE_EQ(levels[levels.size() - 2].level, 0.5);
  EXPECT_DOUBLE_EQ(levels.back().level, 0.0);
}

TEST(Programme, WithoutAHoldIsOnFromStartToEnd) {
  const Session session{30.0 * minute, std::nullopt, std::nullopt, 20.0 * second};
  const auto levels = level_over_session(session_steps(session), session.length);
  EXPECT_DOUBLE_EQ(level_at(levels, 10.0 * second), 0.5);
  EXPECT_DOUBLE_EQ(level_at(levels, 29.0 * minute), 1.0);
}

TEST(Programme, ThatMakesNoSenseIsRefusedInWords) {
  const auto problem = [](std::vector<ProgrammeStep> steps) {
    return english(programme_problem(steps, 10.0 * minute)).value_or("");
  };
  EXPECT_EQ(problem({{1.0, Time(), 10.0 * second}}), "");
  EXPECT_NE(problem({}).find("has no steps"), std::string::npos);
  EXPECT_NE(problem({{0.8, Time(), 10.0 * second}}).find("reaches level 0.8 at most"), std::string::npos);
  EXPECT_NE(problem({{1.5, Time(), 10.0 * second}}).find("asks for level 1.5"), std::string::npos);
  EXPECT_NE(problem({{1.0, Time(), 0.05 * second}}).find("0.05 s a round"), std::string::npos);
  EXPECT_NE(english(programme_problem({{1.0, Time(), 0.5 * second}}, 1000.0 * minute))
                .value_or("")
                .find("120000 rounds"),
            std::string::npos);
}

}  // namespace
}  // namespace wrapgauge
