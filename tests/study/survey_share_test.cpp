#include "model/study/survey_share.hpp"

#include <gtest/gtest.h>

#include "bodyforms/anthropometry.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kForearm = "forearmcircumferenceflexed";

Length girth_of(Sex sex, double percentile) {
  return body_measure_mm(kForearm, sex, percentile).value() * mm;
}

// Those that `people` tries without being told.
std::vector<SurveyGirth> tried(std::initializer_list<double> percentiles) {
  std::vector<SurveyGirth> people;
  for (const Sex sex : {Sex::kMale, Sex::kFemale})
    for (const double percentile : percentiles)
      people.push_back(
          {{sex == Sex::kMale ? "men" : "women", normal_deviate(percentile)}, girth_of(sex, percentile)});
  return people;
}

// The percentile that the survey's table has for a girth, by halving.
double percentile_of(Sex sex, Length girth) {
  double below = 5.0, above = 95.0;
  for (int halving = 0; halving < 60; ++halving) {
    const double middle = 0.5 * (below + above);
    (girth_of(sex, middle) < girth ? below : above) = middle;
  }
  return below;
}

// ANSUR II, forearm girth, the table of bodyforms/anthropometry (confirmed there): the share of men and women
// in a range is the difference of the percentiles that its ends have there.
TEST(SurveyShares, AreThoseOfTheSurveysPercentiles) {
  const Length from = girth_of(Sex::kMale, 10.0), to = girth_of(Sex::kMale, 60.0);
  const auto shares = survey_shares(tried({5, 25, 50, 75, 95}), from, to);
  ASSERT_EQ(shares.size(), 2u);
  EXPECT_EQ(shares[0].group, "men");
  EXPECT_NEAR(shares[0].share, 0.50, 0.01);
  const double of_women = (percentile_of(Sex::kFemale, to) - percentile_of(Sex::kFemale, from)) / 100.0;
  EXPECT_NEAR(shares[1].share, of_women, 0.01);
  EXPECT_NE(of_women, 0.0);
}

TEST(SurveyShares, CountNobodyBeyondThePeopleTried) {
  const auto shares = survey_shares(tried({25, 75}), 1.0 * mm, 1000.0 * mm);
  ASSERT_EQ(shares.size(), 2u);
  for (const SurveyShare& group : shares) EXPECT_NEAR(group.share, 0.50, 1e-6) << group.group;
  EXPECT_EQ(survey_shares(tried({25, 75}), 900.0 * mm, 1000.0 * mm)[0].share, 0.0);
}

TEST(SurveyShares, LeaveOutAGroupThatSaysNothing) {
  EXPECT_TRUE(survey_shares(tried({50}), 200.0 * mm, 300.0 * mm).empty());
  std::vector<SurveyGirth> falling{{{"men", -1.0}, 260.0 * mm}, {{"men", 1.0}, 250.0 * mm}};
  EXPECT_TRUE(survey_shares(falling, 200.0 * mm, 300.0 * mm).empty());
}

}  // namespace
}  // namespace wrapgauge
