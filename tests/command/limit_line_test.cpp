// The limit's line on a picture lies where the predicted pressure times the model factor meets the limit.
#include <gtest/gtest.h>

#include <set>

#include "app/picture/flat_picture.hpp"
#include "app/picture/map_scene.hpp"
#include "app/picture/picture_program.hpp"
#include "tests/contact/hand_made.hpp"

namespace wrapgauge {
namespace {

// A pad on a soft place, held for a session: limit 4 kPa, model factor 1.5, so the line lies at 2.667 kPa.
Estimate evenly_pressed(double kpa) {
  Estimate estimate;
  const auto limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json");
  EXPECT_TRUE(limits.ok());
  if (limits) estimate.limits = *limits;
  hand_made::Worn worn = hand_made::flat_pad(8, 0.04);
  worn.path.states.back().contact_pressure_pa.setConstant(1e3 * kpa);
  estimate.body = worn.body;
  estimate.setup = worn.setup;
  estimate.path = worn.path;
  estimate.map = contact_map(worn.body, worn.setup, worn.path, worn.path.states.back());
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
  EXPECT_NEAR(scene.layout_threshold_pa.minCoeff(), 4000.0 / 1.5, 1e-6);
  EXPECT_NEAR(scene.layout_threshold_pa.maxCoeff(), 4000.0 / 1.5, 1e-6);
  ASSERT_EQ(scene.limits.size(), 1u);
  EXPECT_NEAR(scene.limits[0].limit_pa, 4000.0, 1e-6);
  EXPECT_NEAR(scene.limits[0].pressure_pa, 4000.0 / 1.5, 1e-6);
}

TEST(LimitLine, OfASetWithAnotherFactorMovesWithIt) {
  Estimate estimate = evenly_pressed(1.0);
  estimate.limits.model_factor = 2.5;
  EXPECT_NEAR(map_scene(estimate).layout_threshold_pa.maxCoeff(), 1600.0, 1e-6);
}

// Colours inside the pad, clear of its names: one where it is plain, two or more where it is hatched.
std::size_t shades_of_pad(double kpa) {
  const QImage image = flat_picture(evenly_pressed(kpa), "pad");
  std::set<QRgb> shades;
  const int y = 690;  // near the pad's lower edge
  for (int x = 520; x < 660; ++x) shades.insert(image.pixel(x, y));
  return shades.size();
}

TEST(LimitLine, ThePictureIsHatchedAboveItAndNotBelow) {
  ASSERT_TRUE(start_picture_program().ok());
  EXPECT_EQ(shades_of_pad(2.5), 1u);  // x 1.5 = 3.75 kPa
  EXPECT_GT(shades_of_pad(2.8), 1u);  // x 1.5 = 4.2 kPa, though 2.8 kPa itself lies below the limit
}

}  // namespace
}  // namespace wrapgauge
