// The limit's line on a picture lies where the predicted pressure times the model factor meets the limit.
#include <gtest/gtest.h>

#include <algorithm>

#include "app/picture/flat_picture.hpp"
#include "app/picture/map_scene.hpp"
#include "app/picture/picture_program.hpp"
#include "tests/contact/hand_made.hpp"

namespace wrapgauge {
namespace {

// A pad on a soft place, held for a session: limit 3 kPa, model factor 1.5, so the line lies at 2 kPa.
Estimate evenly_pressed(double kpa) {
  Estimate estimate;
  const auto limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json");
  EXPECT_TRUE(limits.ok());
  if (limits) estimate.limits = *limits;
  estimate.limit_inputs.part = BodyPart::kForearm;
  estimate.limit_inputs.sites_known = true;
  hand_made::Worn worn = hand_made::flat_pad(8, 0.04);
  worn.path.states.back().contact_pressure_pa.setConstant(1e3 * kpa);
  estimate.body = worn.body;
  estimate.setup = worn.setup;
  estimate.path = worn.path;
  estimate.map = contact_map(worn.setup, worn.path, worn.path.states.back());
  ChamberFigures chamber;
  chamber.chamber = "middle";
  chamber.peak = chamber.mean = kpa * kPa;
  estimate.figures.chambers = {chamber};
  return estimate;
}

TEST(LimitLine, LiesAtTheLimitOverTheModelFactor) {
  const MapScene scene = map_scene(evenly_pressed(1.0));
  EXPECT_DOUBLE_EQ(scene.model_factor, 1.5);
  ASSERT_GT(scene.layout_threshold_pa.size(), 0);
  EXPECT_NEAR(scene.layout_threshold_pa.minCoeff(), 3000.0 / 1.5, 1e-6);
  EXPECT_NEAR(scene.layout_threshold_pa.maxCoeff(), 3000.0 / 1.5, 1e-6);
  ASSERT_EQ(scene.limits.size(), 1u);
  EXPECT_NEAR(scene.limits[0].limit_pa, 3000.0, 1e-6);
  EXPECT_NEAR(scene.limits[0].pressure_pa, 3000.0 / 1.5, 1e-6);
}

// What the window draws of any state on the way.
TEST(LimitLine, OfAStateOnTheWayLiesThereToo) {
  const Estimate estimate = evenly_pressed(1.0);
  const Eigen::VectorXd threshold_pa =
      layout_threshold_pa(estimate, estimate.path.states.back(), estimate.figures);
  ASSERT_GT(threshold_pa.size(), 0);
  EXPECT_NEAR(threshold_pa.maxCoeff(), 3000.0 / 1.5, 1e-6);
  const auto at_peak = threshold_at_peak(estimate, threshold_pa);
  ASSERT_TRUE(at_peak);
  EXPECT_NEAR(at_peak->si(), 3000.0 / 1.5, 1e-6);
}

TEST(LimitLine, OfASetWithAnotherFactorMovesWithIt) {
  Estimate estimate = evenly_pressed(1.0);
  estimate.limits.model_factor = 2.5;
  EXPECT_NEAR(map_scene(estimate).layout_threshold_pa.maxCoeff(), 1200.0, 1e-6);
}

// A needle of contact pressure far above the limit, whose mean over 1 cm2 lies below it, is not hatched; and
// what is hatched is what a finding is about.
TEST(LimitLine, IsThatOfTheMeanOverASquareCentimetre) {
  Estimate estimate = evenly_pressed(0.5);
  EquilibriumState& last = estimate.path.states.back();
  const Eigen::Index needle = last.contact_pressure_pa.size() / 2;
  const auto press = [&](double needle_kpa) {
    last.contact_pressure_pa[needle] = 1e3 * needle_kpa;
    estimate.map = contact_map(estimate.setup, estimate.path, last);
    estimate.figures = contact_figures(estimate.body, estimate.setup, {}, estimate.path, last, estimate.map);
    estimate.findings = findings(estimate.limits, estimate.limit_inputs, estimate.setup, estimate.path, last,
                                 estimate.map, estimate.figures, {});
    return map_scene(estimate).share_of_limit;
  };
  const auto above = [&] {
    return std::any_of(estimate.findings.begin(), estimate.findings.end(), [](const Finding& finding) {
      return finding.severity >= Severity::kAboveLimit && finding.model_factor;
    });
  };
  const Eigen::VectorXd narrow = press(4.0);
  EXPECT_GT(last.contact_pressure_pa[needle] * estimate.limits.model_factor, 3e3);
  EXPECT_LT(narrow.maxCoeff(), 1.0);
  EXPECT_FALSE(above());
  const Eigen::VectorXd high = press(40.0);
  EXPECT_GT(high.maxCoeff(), 1.0);
  EXPECT_TRUE(above());
  // Where the finding points lies in the hatch, and its share is the one that is drawn there.
  Eigen::Index at = 0;
  (estimate.setup.flat.vertices_m.rowwise() - estimate.figures.chambers[0].peak_at_flat_m.transpose())
      .rowwise()
      .norm()
      .minCoeff(&at);
  EXPECT_GT(high[at], 1.0);
  EXPECT_NEAR(high[at], estimate.figures.chambers[0].peak * 1.5 / (3.0 * kPa), 1e-9);
}

// How far the lightest and the darkest shade inside the pad lie apart, clear of its names: next to nothing
// where it is plain, much where it is hatched.
int contrast_of_pad(double kpa) {
  const QImage image = flat_picture(evenly_pressed(kpa), "pad");
  int low = 255, high = 0;
  for (int x = 520; x < 660; ++x) {
    const int shade = qGray(image.pixel(x, 690));  // near the pad's lower edge
    low = std::min(low, shade), high = std::max(high, shade);
  }
  return high - low;
}

TEST(LimitLine, ThePictureIsHatchedAboveItAndNotBelow) {
  ASSERT_TRUE(start_picture_program().ok());
  EXPECT_LT(contrast_of_pad(1.9), 6);   // x 1.5 = 2.85 kPa
  EXPECT_GT(contrast_of_pad(2.1), 60);  // x 1.5 = 3.15 kPa, though 2.1 kPa itself lies below the limit
}

}  // namespace
}  // namespace wrapgauge
