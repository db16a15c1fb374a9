#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "model/study/influence.hpp"
#include "model/study/latin_hypercube.hpp"
#include "model/study/percentile.hpp"
#include "model/study/random_stream.hpp"

namespace wrapgauge {
namespace {

// Reference output of splitmix64 for the seed 1234567, as passed round with the algorithm (from memory).
TEST(RandomStream, GivesTheReferenceNumbers) {
  RandomStream random(1234567);
  for (const std::uint64_t expected : {6457827717110365317u, 3203168211198807973u, 9817491932198370423u,
                                       4593380528125082431u, 16408922859458223821u})
    EXPECT_EQ(random.next(), expected);
}

TEST(RandomStream, BelowReachesEveryNumberAboutAsOften) {
  RandomStream random(3);
  std::vector<int> count(7);
  for (int i = 0; i < 7000; ++i) ++count[random.below(7)];
  for (const int c : count) EXPECT_NEAR(c, 1000, 120);  // four standard deviations
}

// Published test vectors of FNV-1a, 64 bits (Noll; from memory).
TEST(HashOf, GivesThePublishedValues) {
  EXPECT_EQ(hash_of(""), 0xcbf29ce484222325u);
  EXPECT_EQ(hash_of("a"), 0xaf63dc4c8601ec8cu);
  EXPECT_EQ(hash_of("foobar"), 0x85944171f73967e8u);
}

TEST(LatinHypercube, EveryStratumOfEveryInputHoldsOneRun) {
  constexpr int kRuns = 32;
  const Eigen::MatrixXd sample = latin_hypercube({"a", "b", "c"}, kRuns, 7);
  ASSERT_EQ(sample.rows(), kRuns);
  for (Eigen::Index input = 0; input < sample.cols(); ++input) {
    std::set<int> strata;
    for (Eigen::Index run = 0; run < kRuns; ++run) {
      EXPECT_GE(sample(run, input), 0.0);
      EXPECT_LT(sample(run, input), 1.0);
      strata.insert(static_cast<int>(sample(run, input) * kRuns));
    }
    EXPECT_EQ(strata.size(), static_cast<std::size_t>(kRuns));
  }
}

TEST(LatinHypercube, InputsAreNotTiedToOneAnother) {
  const Eigen::MatrixXd sample = latin_hypercube({"a", "b"}, 200, 11);
  const double correlation = rank_influence(sample.col(0), sample.col(1)).inputs[0].correlation;
  EXPECT_LT(std::abs(correlation), chance_correlation(200) * 1.5);
}

TEST(LatinHypercube, AnInputLeftOutLeavesTheOthersAsTheyWere) {
  const Eigen::MatrixXd all = latin_hypercube({"a", "b", "c"}, 16, 5),
                        fewer = latin_hypercube({"a", "c"}, 16, 5);
  EXPECT_EQ(all.col(0), fewer.col(0));
  EXPECT_EQ(all.col(2), fewer.col(1));
  EXPECT_NE(all.col(0), latin_hypercube({"a"}, 16, 6).col(0));
}

// Worked by hand after definition 7 of Hyndman & Fan 1996: place 0.4 x 4 = 1.6, so 20 + 0.6 (35 - 20).
TEST(Percentile, FollowsDefinitionSevenOfHyndmanAndFan) {
  const std::vector<double> values{35, 15, 50, 20, 40};
  EXPECT_DOUBLE_EQ(percentile(values, 0.4), 29.0);
  EXPECT_DOUBLE_EQ(percentile(values, 0.05), 16.0);  // place 0.2
  EXPECT_DOUBLE_EQ(percentile(values, 0.95), 48.0);  // place 3.8
  EXPECT_DOUBLE_EQ(percentile(values, 0.5), 35.0);
  EXPECT_DOUBLE_EQ(percentile(values, 1.0), 50.0);
  EXPECT_DOUBLE_EQ(percentile({4.0}, 0.05), 4.0);
}

TEST(Ranks, EqualValuesShareTheirMeanRank) {
  Eigen::VectorXd values(5), expected(5);
  values << 3.0, 1.0, 3.0, 7.0, 1.0;
  expected << 3.5, 1.5, 3.5, 5.0, 1.5;
  EXPECT_EQ(ranks(values), expected);
}

// Normal inputs, y = 5a - 3b + c: a and y correlate by r = 5/sqrt(35), and their ranks by 6/pi asin(r/2)
// (Pearson 1907).
TEST(RankInfluence, FindsTheKnownRankCorrelationOfNormalValues) {
  RandomStream random(8);
  const auto normal = [&] {  // Box & Muller 1958
    return std::sqrt(-2.0 * std::log(1.0 - random.unit())) * std::cos(2.0 * M_PI * random.unit());
  };
  Eigen::MatrixXd sample(4000, 3);
  for (Eigen::Index i = 0; i < sample.size(); ++i) sample.data()[i] = normal();
  const Eigen::VectorXd y = sample * Eigen::Vector3d(5.0, -3.0, 1.0);
  const InfluenceRanking ranking = rank_influence(sample, y);
  const auto expected = [](double r) { return 6.0 / M_PI * std::asin(0.5 * r); };
  EXPECT_NEAR(ranking.inputs[0].correlation, expected(5.0 / std::sqrt(35.0)), 0.03);
  EXPECT_NEAR(ranking.inputs[1].correlation, expected(-3.0 / std::sqrt(35.0)), 0.03);
  EXPECT_NEAR(ranking.inputs[2].correlation, expected(1.0 / std::sqrt(35.0)), 0.04);
}

// y = 5a - 3b + c over independent even inputs: the coefficients stand as 5 : -3 : 1 and explain nearly all
// of y; the ranks bend the straight lines a little.
TEST(RankInfluence, OrdersTheInputsOfALinearModelByTheirCoefficients) {
  const Eigen::MatrixXd sample = latin_hypercube({"c", "b", "a", "none"}, 400, 2);
  const Eigen::VectorXd y = 5.0 * sample.col(2) - 3.0 * sample.col(1) + sample.col(0);
  const InfluenceRanking ranking = rank_influence(sample, y);
  EXPECT_EQ(ranking.inputs[0].input, 2);
  EXPECT_EQ(ranking.inputs[1].input, 1);
  EXPECT_EQ(ranking.inputs[2].input, 0);
  EXPECT_EQ(ranking.inputs[3].input, 3);
  const double length = std::sqrt(35.0);
  EXPECT_NEAR(ranking.inputs[0].regression, 5.0 / length, 0.06);
  EXPECT_NEAR(ranking.inputs[1].regression, -3.0 / length, 0.06);
  EXPECT_NEAR(ranking.inputs[2].regression, 1.0 / length, 0.06);
  EXPECT_NEAR(ranking.inputs[3].regression, 0.0, 0.03);
  EXPECT_GT(ranking.explained, 0.96);
}

TEST(RankInfluence, AnyRisingRelationCountsAsAStraightOne) {
  const Eigen::MatrixXd sample = latin_hypercube({"a", "b"}, 50, 9);
  const Eigen::VectorXd y = (20.0 * sample.col(0)).array().exp();
  const InfluenceRanking ranking = rank_influence(sample, y);
  EXPECT_EQ(ranking.inputs[0].input, 0);
  EXPECT_NEAR(ranking.inputs[0].correlation, 1.0, 1e-12);
  EXPECT_NEAR(ranking.explained, 1.0, 1e-12);
}

// Ishigami & Homma 1990 with a = 7, b = 0.1: total effects order x1, x2, x3, but x2 acts by sin^2 and x3 only
// together with x1, neither rising nor falling, so a method of ranks must find x1 alone and own up to the
// rest.
TEST(RankInfluence, OwnsUpToWhatRanksCannotSeeInTheIshigamiFunction) {
  const Eigen::MatrixXd sample = latin_hypercube({"x1", "x2", "x3"}, 500, 4);
  const Eigen::MatrixXd x = (sample.array() - 0.5) * 2.0 * M_PI;
  const Eigen::VectorXd y = x.col(0).array().sin() + 7.0 * x.col(1).array().sin().square() +
                            0.1 * x.col(2).array().pow(4) * x.col(0).array().sin();
  const InfluenceRanking ranking = rank_influence(sample, y);
  EXPECT_EQ(ranking.inputs[0].input, 0);
  EXPECT_GT(ranking.inputs[0].regression, 0.35);
  EXPECT_LT(std::abs(ranking.inputs[1].regression), 0.15);
  EXPECT_LT(ranking.explained, 0.35);
}

TEST(RankInfluence, AResultThatNeverChangesHasNoInfluences) {
  const InfluenceRanking ranking =
      rank_influence(latin_hypercube({"a", "b"}, 12, 1), Eigen::VectorXd::Constant(12, 3.0));
  for (const Influence& influence : ranking.inputs) EXPECT_EQ(influence.regression, 0.0);
  EXPECT_EQ(ranking.explained, 0.0);
}

}  // namespace
}  // namespace wrapgauge
