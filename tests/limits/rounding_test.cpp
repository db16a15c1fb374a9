// What is shown is rounded, what is compared is not: an excess too small to show is told all the same.
#include <gtest/gtest.h>

#include <algorithm>

#include "model/limits/hazard.hpp"
#include "model/limits/pressure_finding.hpp"
#include "tests/contact/hand_made.hpp"

namespace wrapgauge {
namespace {

// The finding about a pad on a soft place whose peak, after the factor of 1.5, is `raised_kpa`.
std::optional<Finding> of_pad(double raised_kpa, double share_of_girth = 0.0) {
  const auto limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json");
  EXPECT_TRUE(limits.ok());
  if (!limits) return std::nullopt;
  ContactFigures figures;
  figures.share_of_girth = share_of_girth;
  ChamberFigures chamber;
  chamber.chamber = "pad";
  chamber.peak = figures.peak_anywhere = raised_kpa / 1.5 * kPa;
  figures.chambers = {chamber};
  figures.peak_part = name_of("pad");
  LimitInputs inputs;
  inputs.part = BodyPart::kForearm;
  inputs.sites_known = true;
  const InflationSetup setup;
  const LoadPath path;
  const EquilibriumState state;
  const ContactMap map;
  const auto found = pressure_findings(*limits, inputs, {setup, path, state, map, figures, {}});
  EXPECT_EQ(found.size(), 1u);
  return found.empty() ? std::nullopt : std::optional<Finding>(found.front());
}

TEST(Rounding, NeverHidesAnExcessOverALimit) {
  for (const double excess : {1e-9, 1e-6, 1e-4, 0.004}) {
    const auto found = of_pad(3.0 * (1.0 + excess));
    ASSERT_TRUE(found);
    EXPECT_EQ(found->severity, Severity::kAboveLimit) << "above the limit by a share of " << excess;
    EXPECT_GT(found->share_of_limit, 1.0);
    EXPECT_NE(english(found->sentence).find("above the limit of 3.0 kPa"), std::string::npos)
        << english(found->sentence);
  }
}

// The figure after the factor stands above the limit it is said to be above.
TEST(Rounding, ShowsAnExcessWithAsManyDigitsAsItTakes) {
  const auto found = of_pad(3.0 * 1.002);
  ASSERT_TRUE(found);
  EXPECT_NE(english(found->sentence).find("3.01 kPa (23 mmHg), above the limit of 3.0 kPa (23 mmHg)"),
            std::string::npos)
      << english(found->sentence);
}

TEST(Rounding, MakesNoExcessOfAPressureJustBelowALimit) {
  const auto found = of_pad(3.0 * (1.0 - 1e-9));
  ASSERT_TRUE(found);
  EXPECT_EQ(found->severity, Severity::kWarn);
  EXPECT_LT(found->share_of_limit, 1.0);
}

TEST(Rounding, NeverHidesAnExcessOverAWarning) {
  const auto above = of_pad(2.0 * (1.0 + 1e-9)), below = of_pad(2.0 * (1.0 - 1e-9));
  ASSERT_TRUE(above && below);
  EXPECT_EQ(above->severity, Severity::kWarn);
  EXPECT_EQ(below->severity, Severity::kNote);
}

TEST(Rounding, NeverHidesAnExcessOverTheTourniquetStop) {
  const auto limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json");
  ASSERT_TRUE(limits.ok());
  ContactFigures figures;
  figures.share_of_girth = 0.9;
  const auto severity = [&](double raised_kpa) -> std::optional<Severity> {
    figures.peak_anywhere = raised_kpa / 1.5 * kPa;
    const InflationSetup setup;
    const LoadPath path;
    const EquilibriumState state;
    const ContactMap map;
    const auto found = cuff_findings(*limits, {setup, path, state, map, figures, {}});
    if (found.empty()) return std::nullopt;
    return found.front().severity;
  };
  EXPECT_EQ(severity(5.3 * (1.0 + 1e-9)), Severity::kStop);
  EXPECT_EQ(severity(5.3 * (1.0 - 1e-9)), Severity::kWarn);
  EXPECT_EQ(severity(4.0 * (1.0 - 1e-9)), std::nullopt);
}

}  // namespace
}  // namespace wrapgauge
