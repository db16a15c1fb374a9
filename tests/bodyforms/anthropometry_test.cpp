#include "bodyforms/anthropometry.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

TEST(BodyMeasure, AtATablePercentileIsTheTablesValue) {
  // ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007): wrist, men, P5 162, P50 176, P95 191 mm; calf,
  // women, P1 312.7, P99 452 mm.
  for (const auto& [percentile, girth] :
       {std::pair(5.0, 162.0), std::pair(50.0, 176.0), std::pair(95.0, 191.0)})
    EXPECT_NEAR(*body_measure_mm("wristcircumference", Sex::kMale, percentile), girth, 1e-9);
  EXPECT_NEAR(*body_measure_mm("calfcircumference", Sex::kFemale, 1.0), 312.7, 1e-9);
  EXPECT_NEAR(*body_measure_mm("calfcircumference", Sex::kFemale, 99.0), 452.0, 1e-9);
}

TEST(BodyMeasure, GrowsWithThePercentile) {
  for (const BodyMeasure& measure : body_measures())
    for (const Sex sex : {Sex::kMale, Sex::kFemale}) {
      double before = 0.0;
      for (double percentile = 1.0; percentile <= 99.0; percentile += 0.5) {
        const double value = *body_measure_mm(measure.name, sex, percentile);
        EXPECT_GT(value, before) << measure.name << " " << percentile;
        before = value;
      }
    }
}

TEST(BodyMeasure, BetweenColumnsIsLinearInTheNormalDeviate) {
  // Normal table: P10 lies at -1.2816, P5 at -1.6449, P25 at -0.6745.
  const double low = *body_measure_mm("stature", Sex::kFemale, 5.0),
               high = *body_measure_mm("stature", Sex::kFemale, 25.0);
  const double share = (-1.2816 + 1.6449) / (-0.6745 + 1.6449);
  EXPECT_NEAR(*body_measure_mm("stature", Sex::kFemale, 10.0), low + share * (high - low), 0.01);
}

TEST(BodyMeasure, NormalDeviateAgreesWithPrintedTables) {
  EXPECT_NEAR(normal_deviate(50.0), 0.0, 1e-12);
  EXPECT_NEAR(normal_deviate(97.5), 1.959964, 1e-6);
  EXPECT_NEAR(normal_deviate(5.0), -1.644854, 1e-6);
  EXPECT_NEAR(normal_deviate(99.0), 2.326348, 1e-6);
}

TEST(BodyMeasure, OutsideTheTableIsAProblem) {
  for (const double percentile : {0.0, 0.99, 99.1, 100.0, -3.0})
    EXPECT_NE(body_measure_mm("stature", Sex::kMale, percentile).problem().message.find("from 1 to 99"),
              std::string::npos);
  EXPECT_NE(body_measure_mm("elbowgirth", Sex::kMale, 50.0).problem().message.find("'elbowgirth'"),
            std::string::npos);
}

}  // namespace
}  // namespace wrapgauge
