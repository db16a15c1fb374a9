#include "model/study/ceiling_search.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace wrapgauge {
namespace {

// A device whose share of the limit is a known function, solved in six steps as the load path does.
struct Device {
  std::function<double(double)> share;
  double runs_away_at = INFINITY, fails_at = INFINITY;
  std::vector<double> asked = {};

  Result<SharePath> solve(double inflation, double known_within) {
    asked.push_back(inflation);
    if (inflation > fails_at) return Problem{ProblemKind::kNotConverged, "No equilibrium.", {}};
    SharePath path;
    for (int step = 0; step <= 6 && !path.at_limit_point; ++step) {
      double at = step == 6 ? inflation : inflation * step / 6.0;
      if (at >= runs_away_at) at = runs_away_at, path.at_limit_point = true;
      if (at <= known_within) continue;
      path.points.push_back({at, share(at)});
      if (share(at) > 1.0) return path.at_limit_point = false, path;  // what lies beyond counts for nothing
    }
    return path;
  }
  Result<CeilingSearch> search() {
    return search_ceiling([this](double inflation, double within) { return solve(inflation, within); });
  }
};

void expect_ceiling(Device device, double expected, CeilingStop stop) {
  const auto found = device.search();
  ASSERT_TRUE(found.ok()) << found.problem().message;
  EXPECT_EQ(found->stop, stop);
  EXPECT_LE(found->at.inflation, expected * (1.0 + 1e-12));
  EXPECT_GE(found->at.inflation, expected * 0.99 - 1e-9);
  EXPECT_LE(found->at.share, 1.0);
  EXPECT_LE(found->solves, 12);
  // The answer itself was solved to, not read off a path to a higher inflation.
  EXPECT_NE(std::find(device.asked.begin(), device.asked.end(), found->at.inflation), device.asked.end());
  if (std::isfinite(device.runs_away_at) || std::isfinite(device.fails_at)) return;
  EXPECT_GT(device.share(1.05 * found->at.inflation), 1.0);
}

TEST(CeilingSearch, FindsWhereAKnownRisingShareMeetsOne) {
  expect_ceiling({[](double x) { return 0.2 + 1.3 * x; }}, 0.8 / 1.3, CeilingStop::kLimit);
  expect_ceiling({[](double x) { return x * x / 0.36; }}, 0.6, CeilingStop::kLimit);
  expect_ceiling({[](double x) { return 0.9 + 0.1 * std::sqrt(x / 0.3); }}, 0.3, CeilingStop::kLimit);
}

TEST(CeilingSearch, GoesBeyondThePlanWhenThePlanIsWithin) {
  expect_ceiling({[](double x) { return x / 3.3; }}, 3.3, CeilingStop::kLimit);
}

TEST(CeilingSearch, TakesTheFirstCrossingOfAShareThatFallsAgain) {
  expect_ceiling({[](double x) { return x < 0.7 ? x / 0.4 : 0.3; }}, 0.4, CeilingStop::kLimit);
}

TEST(CeilingSearch, StopsBelowAJump) {
  expect_ceiling({[](double x) { return x < 0.55 ? 0.5 : 2.0; }}, 0.55, CeilingStop::kLimit);
}

TEST(CeilingSearch, ALimitPointBelowTheLimitsIsTheCeiling) {
  Device device{[](double x) { return 0.5 * x; }};
  device.runs_away_at = 0.8;
  expect_ceiling(device, 0.8, CeilingStop::kLimitPoint);
}

TEST(CeilingSearch, AFailedSolveBoundsTheAnswer) {
  Device device{[](double x) { return 0.5 * x; }};
  device.fails_at = 0.37;
  expect_ceiling(device, 0.37, CeilingStop::kNoEquilibrium);
}

TEST(CeilingSearch, SaysWhenItIsAboveBeforeAnythingIsInflated) {
  const auto found = Device{[](double x) { return 1.2 + x; }}.search();
  ASSERT_TRUE(found.ok());
  EXPECT_EQ(found->stop, CeilingStop::kAlreadyAbove);
  EXPECT_EQ(found->at.inflation, 0.0);
  EXPECT_DOUBLE_EQ(found->at.share, 1.2);
}

TEST(CeilingSearch, SaysWhenNothingIsMet) {
  const auto found = Device{[](double x) { return 0.01 * x; }}.search();
  ASSERT_TRUE(found.ok());
  EXPECT_EQ(found->stop, CeilingStop::kWithin);
  EXPECT_DOUBLE_EQ(found->at.inflation, 8.0);
}

TEST(CeilingSearch, HandsOnOtherProblems) {
  const auto found = search_ceiling([](double, double) -> Result<SharePath> {
    return Problem{ProblemKind::kCancelled, "Cancelled.", {}};
  });
  ASSERT_FALSE(found.ok());
  EXPECT_EQ(found.problem().kind, ProblemKind::kCancelled);
}

}  // namespace
}  // namespace wrapgauge
