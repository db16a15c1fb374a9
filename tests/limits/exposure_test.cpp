#include "model/limits/exposure.hpp"

#include <gtest/gtest.h>

#include <string>

namespace wrapgauge {
namespace {

using Points = std::vector<PressurePoint>;

LimitRow row(double limit_kpa, UseTimes times) {
  LimitRow row;
  row.limit = limit_kpa * kPa;
  row.times = times;
  return row;
}

// Three holds of 60 s at 6 kPa, 120 s apart, in 9 minutes. By hand: 3 x 6 kPa x 1 min = 18 kPa min; on for a
// third of the time; let go for twice the hold before.
Points three_holds() {
  Points points;
  for (int i = 0; i < 3; ++i) {
    const double t = 180.0 * i;
    points.insert(points.end(), {{t * second, Pressure()},
                                 {t * second, 6.0 * kPa},
                                 {(t + 60.0) * second, 6.0 * kPa},
                                 {(t + 60.0) * second, Pressure()}});
  }
  points.push_back({540.0 * second, Pressure()});
  return points;
}

const UseTimes kShort{10.0 * minute, std::nullopt, 60.0 * second, 2.0, 10.0 * minute};

TEST(Exposure, OfThreeHoldsIsWhatTheHandSums) {
  const Exposure e = exposure(three_holds(), 1.3 * kPa);
  EXPECT_NEAR(e.product / kPa_min, 18.0, 1e-12);
  EXPECT_NEAR(e.on / second, 180.0, 1e-9);
  EXPECT_NEAR(e.longest_hold / second, 60.0, 1e-9);
  ASSERT_TRUE(e.least_off_over_on);
  EXPECT_NEAR(*e.least_off_over_on, 2.0, 1e-12);
  EXPECT_NEAR(e.duty, 1.0 / 3.0, 1e-12);
  EXPECT_NEAR(e.session / minute, 9.0, 1e-12);
  EXPECT_NEAR(e.highest / kPa, 6.0, 1e-12);
  EXPECT_TRUE(broken_times(e, kShort).empty());
}

// Limit 8 kPa, 10 minutes, on for a third: 8 x 10 / 3 = 26.67 kPa min. A pulse row: 15 kPa, 15 minutes, on
// for a quarter: 56.25 kPa min. A soft place held for a session: 4 kPa, 120 min, 10 min off in every hour:
// 400.
TEST(Exposure, AllowedProductIsLimitTimesLongestTimeOn) {
  EXPECT_NEAR(allowed_product(row(8.0, kShort)) / kPa_min, 26.6667, 1e-3);
  EXPECT_NEAR(allowed_product(row(15.0, {Time(), {}, 2.0 * second, 3.0, 15.0 * minute})) / kPa_min, 56.25,
              1e-9);
  EXPECT_NEAR(allowed_product(row(4.0, {Time(), {}, 50.0 * minute, 0.2, 120.0 * minute})) / kPa_min, 400.0,
              1e-9);
}

// A triangle from 0 to 4 kPa and back in 20 s: product 40 kPa s; above 1 kPa from 2.5 s to 17.5 s.
TEST(Exposure, OfARampCountsFromWhereItCrossesTheRestPressure) {
  const Points triangle{{Time(), Pressure()}, {10.0 * second, 4.0 * kPa}, {20.0 * second, Pressure()}};
  const Exposure e = exposure(triangle, 1.0 * kPa);
  EXPECT_NEAR(e.product.si(), 40e3, 1e-6);
  EXPECT_NEAR(e.longest_hold / second, 15.0, 1e-9);
  EXPECT_FALSE(e.least_off_over_on);
}

// The same triangle has given 20 kPa s at its top, 10 s; 5 kPa s (0.2 t^2) at 5 s; 39.2 kPa s 2 s before its
// end.
TEST(Exposure, ReachesAProductWhenTheHandSaysSo) {
  const Points triangle{{Time(), Pressure()}, {10.0 * second, 4.0 * kPa}, {20.0 * second, Pressure()}};
  EXPECT_NEAR(time_of_product(triangle, PressureTime(20e3)).value() / second, 10.0, 1e-9);
  EXPECT_NEAR(time_of_product(triangle, PressureTime(5e3)).value() / second, 5.0, 1e-9);
  EXPECT_NEAR(time_of_product(triangle, PressureTime(39.2e3)).value() / second, 18.0, 1e-9);
  EXPECT_FALSE(time_of_product(triangle, PressureTime(41e3)));
  // 6 kPa held: 3 kPa min after 30 s; half of 26.67 in the third hold, 13.33 = 12 + 6 t: 360 s + 13.3 s.
  EXPECT_NEAR(time_of_product(three_holds(), 3.0 * kPa_min).value() / second, 30.0, 1e-9);
  EXPECT_NEAR(time_of_product(three_holds(), 13.3333 * kPa_min).value() / second, 373.333, 1e-2);
}

TEST(Exposure, SaysWhichTimesAreBroken) {
  const auto words = [](const Points& points) {
    std::string all;
    for (const BrokenTime& broken : broken_times(exposure(points, 1.3 * kPa), kShort))
      all += english(broken.words) + "; ";
    return all;
  };
  const Points long_hold{{Time(), 3.0 * kPa}, {11.0 * minute, 3.0 * kPa}};
  EXPECT_NE(words(long_hold).find("pressed for 11 min without a break, 60 s at most"), std::string::npos);
  EXPECT_NE(words(long_hold).find("a session of 11 min, 10 min at most"), std::string::npos);
  Points hasty{{Time(), 3.0 * kPa},         {60.0 * second, 3.0 * kPa}, {60.0 * second, Pressure()},
               {90.0 * second, Pressure()}, {90.0 * second, 3.0 * kPa}, {150.0 * second, 3.0 * kPa},
               {150.0 * second, Pressure()}};
  EXPECT_NE(words(hasty).find("off for only 0.5 times the hold before it, 2 times at least"),
            std::string::npos);
  EXPECT_NE(words(hasty).find("pressed for 80 % of the time, 33 % at most"), std::string::npos);
}

// A device that still presses when it is vented gives no rest.
TEST(Exposure, BelowTheRestPressureOnlyCountsAsLetGo) {
  Points points = three_holds();
  for (PressurePoint& point : points) point.pressure = std::max(point.pressure, 1.5 * kPa);
  EXPECT_NEAR(exposure(points, 1.3 * kPa).longest_hold / minute, 9.0, 1e-9);
  EXPECT_NEAR(exposure(points, 1.6 * kPa).longest_hold / second, 60.0, 1e-6);
}

}  // namespace
}  // namespace wrapgauge
