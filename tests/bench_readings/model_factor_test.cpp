#include "model/bench/model_factor.hpp"

#include <gtest/gtest.h>

#include "model/bench/slip_check.hpp"
#include "tests/bench_readings/bench_rows.hpp"

namespace wrapgauge {
namespace {

using namespace bench;

class ModelFactorRule : public testing::Test {
 protected:
  // Contact over two chambers and two levels, read `ratio` times what is fitted.
  void read_contact(int count, double ratio, double error, int chambers = 2, int levels = 2) {
    for (int k = 0; k < count; ++k) {
      rows_.push_back(row(ReadingKind::kContact, k % chambers ? "far pad" : "pad",
                          {{F::kGauge, (k / chambers) % levels ? 2e3 : 1e3}}, error));
      const double scatter = k % 2 ? 1.02 : 1.0 / 1.02;
      fit_.readings.push_back({rows_.size() - 1, 1e3 * ratio * scatter, 1e3, 1e3, 0.0, false});
    }
  }
  ModelFactor factor(bool same_part = true) const {
    return model_factor(rows_, fit_, small_band::two_chambers(1.0 * kPa).layout, same_part);
  }

  std::vector<Reading> rows_;
  BenchFit fit_;
};

// Owen's factor for 8 values, 95 % of them with 95 % confidence: 3.187 (ISO 16269-6, from memory).
TEST(ToleranceBound, IsOwensFactorTimesTheScatter) {
  const std::vector<double> logs = {-0.1, 0.1, -0.1, 0.1, -0.1, 0.1, -0.1, 0.1};
  EXPECT_NEAR(std::log(tolerance_bound(logs, 0.0)) / std::sqrt(8 * 0.01 / 7), 3.187, 0.001);
}

TEST_F(ModelFactorRule, StaysAtOneAndAHalfWithoutContact) {
  EXPECT_DOUBLE_EQ(factor().factor, 1.5);
  EXPECT_EQ(english(factor().why), "The factor stays at 1.5: no contact was read.");
}

TEST_F(ModelFactorRule, FallsToWhatEightReadingsBear) {
  read_contact(8, 1.0, 0.05);
  const ModelFactor of = factor();
  EXPECT_TRUE(of.from_readings);
  EXPECT_NEAR(of.factor, std::exp(3.187 * std::hypot(0.05, 0.0198 * std::sqrt(8.0 / 7.0))), 0.011);
  EXPECT_LT(of.factor, 1.5);
}

TEST_F(ModelFactorRule, NeverFallsWithoutEnoughReadingsChambersOrLevels) {
  read_contact(7, 1.0, 0.03);
  EXPECT_DOUBLE_EQ(factor().factor, 1.5);
  rows_.clear(), fit_.readings.clear();
  read_contact(12, 1.0, 0.03, 1, 2);
  EXPECT_DOUBLE_EQ(factor().factor, 1.5);
  rows_.clear(), fit_.readings.clear();
  read_contact(12, 1.0, 0.03, 2, 1);
  EXPECT_DOUBLE_EQ(factor().factor, 1.5);
}

TEST_F(ModelFactorRule, NeverFallsByReadingsOfAnotherPart) {
  read_contact(12, 1.0, 0.03);
  EXPECT_DOUBLE_EQ(factor(false).factor, 1.5);
  EXPECT_NE(english(factor(false).why).find("another part of a body"), std::string::npos);
}

TEST_F(ModelFactorRule, NeverFallsBelowItsLeast) {
  read_contact(40, 1.0, 0.005);
  EXPECT_DOUBLE_EQ(factor().factor, kLeastModelFactor);
}

TEST_F(ModelFactorRule, GoesUpByASingleReadingAtOnce) {
  read_contact(1, 1.6, 0.05);
  EXPECT_GT(factor().factor, 1.6);
  EXPECT_NE(english(factor().why).find("The factor goes up to"), std::string::npos);
}

TEST_F(ModelFactorRule, CountsTheSensorsErrorThatScatterDoesNotShow) {
  read_contact(10, 1.0, 0.03);
  const double fine = factor().factor;
  for (Reading& one : rows_) one.error = 0.10;
  EXPECT_GT(factor().factor, fine + 0.1);
}

Readings of(std::vector<Reading> rows) {
  Readings readings;
  readings.file = "r.csv";
  readings.rows = std::move(rows);
  return readings;
}

Reading fill(const std::string& id, double gauge_kpa) {
  Reading one = row(ReadingKind::kFill, "valve", {{F::kFilled, 5e-6}, {F::kGauge, gauge_kpa * 1e3}});
  one.id = id;
  one.line = 8;
  return one;
}

TEST(SlipCheck, AsksWhetherAReadingIsInTheOtherUnit) {
  const auto slip = slip_of(of({fill("a", 1.0), fill("b", 1.1), fill("c", 7.5)}), {1e3, 1e3, 1e3});
  ASSERT_TRUE(slip);
  EXPECT_NE(slip->message.find("r.csv, line 8: reading 'c', 7.50 kPa (56.3 mmHg), is 7.2 times"),
            std::string::npos)
      << slip->message;
  EXPECT_NE(slip->message.find("Is it mmHg, typed in the column for kPa?"), std::string::npos);
}

TEST(SlipCheck, AsksWhetherAPointIsInItsPlace) {
  const auto slip = slip_of(of({fill("a", 1.0), fill("b", 0.1), fill("c", 1.0)}), {1e3, 1e3, 1e3});
  ASSERT_TRUE(slip);
  EXPECT_NE(slip->message.find("'b', 0.100 kPa"), std::string::npos) << slip->message;
  EXPECT_NE(slip->message.find("Is the decimal point in its place?"), std::string::npos);
}

TEST(SlipCheck, AsksAboutAWholeColumnInTheOtherUnit) {
  EXPECT_TRUE(slip_of(of({fill("a", 7.5), fill("b", 7.5), fill("c", 7.5)}), {1e3, 1e3, 1e3}));
}

TEST(SlipCheck, LeavesWhatAFitMayTakeAndWhatIsConfirmed) {
  EXPECT_FALSE(slip_of(of({fill("a", 0.4), fill("b", 0.4), fill("c", 0.5)}), {1e3, 1e3, 1e3}));
  std::vector<Reading> rows = {fill("a", 1.0), fill("b", 1.0), fill("c", 9.0)};
  rows[2].confirmed = true;
  EXPECT_FALSE(slip_of(of(rows), {1e3, 1e3, 1e3}));
}

}  // namespace
}  // namespace wrapgauge
