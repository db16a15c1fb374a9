#include "model/core/beside_limit.hpp"

#include <gtest/gtest.h>

#include <cstdlib>

namespace wrapgauge {
namespace {

double first_number(const Phrase& phrase) {
  return std::strtod(english(phrase).c_str(), nullptr);
}

double number_in_brackets(const Phrase& phrase) {
  const std::string text = english(phrase);
  return std::strtod(text.c_str() + text.find('(') + 1, nullptr);
}

// By hand: 2.004 kPa is 15.03 mmHg, and 2.0 kPa is shown as 15 mmHg.
TEST(BesideLimit, AnExcessIsShownWithTheDigitsThatItTakes) {
  EXPECT_EQ(english(figures_beside(2.004 * kPa, 2.0 * kPa)), "2.004 kPa (15.03 mmHg)");
  EXPECT_EQ(english(figures_beside(2.46 * kPa, 2.5 * kPa)), "2.5 kPa (19 mmHg)");
  EXPECT_EQ(english(figures_beside(4.8 * kPa, 4.0 * kPa)), "4.8 kPa (36 mmHg)");
  EXPECT_EQ(english(percent_beside(1.002)), "100.2 %");
  EXPECT_EQ(english(percent_beside(1.43)), "143 %");
  EXPECT_EQ(number_beside(2.004, 2.0, 2), "2.004");
}

TEST(BesideLimit, NoPressureAtOrBelowALimitIsShownAboveIt) {
  EXPECT_EQ(english(figures_beside(2.24 * kPa, 2.24 * kPa)), "2.2 kPa (17 mmHg)");
  EXPECT_EQ(english(limit_figures(2.24 * kPa)), "2.24 kPa (17 mmHg)");
  EXPECT_EQ(english(percent_beside(0.9996)), "100 %");
}

TEST(BesideLimit, StandsOnItsSideForEveryPressureNearEveryLimit) {
  for (const double limit_kpa : {1.0, 1.5, 1.8, 2.0, 2.25, 2.7, 3.0, 3.333, 5.3, 7.5, 10.0})
    for (const double share :
         {0.9, 0.99, 0.9999, 0.999999, 1.0, 1.0000001, 1.00001, 1.001, 1.01, 1.04, 1.3}) {
      const Pressure limit = limit_kpa * kPa, value = limit * share;
      const Phrase shown = figures_beside(value, limit), line = limit_figures(limit);
      EXPECT_EQ(first_number(shown) > first_number(line), value > limit) << english(shown);
      const double mmhg = number_in_brackets(shown), line_mmhg = number_in_brackets(line);
      EXPECT_TRUE(value > limit ? mmhg >= line_mmhg : mmhg <= line_mmhg) << english(shown);
      EXPECT_EQ(first_number(percent_beside(value / limit)) > 100.0, value > limit) << share;
    }
}

}  // namespace
}  // namespace wrapgauge
