#include "app/picture/colour_map.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

#include "app/picture/raster.hpp"

namespace wrapgauge {
namespace {

TEST(ColourMap, LightnessFallsInAStraightLine) {
  for (int i = 0; i <= 20; ++i)
    EXPECT_NEAR(lightness_of(map_colour(i / 20.0)), map_lightness(i / 20.0), 1.5) << i;
}

TEST(ColourMap, StaysInOneHueFamily) {
  for (int i = 2; i <= 20; ++i) {
    const float hue = map_colour(i / 20.0).hueF() * 360.0f;
    EXPECT_GT(hue, 250.0f) << i;
    EXPECT_LT(hue, 290.0f) << i;
  }
}

TEST(Raster, NearerSurfaceHidesFartherWhateverTheOrder) {
  const auto square = [](Raster& raster, double z, double pressure) {
    const auto at = [&](double x, double y) { return RasterVertex{{x, y, z}, 1.0, pressure, 0.0}; };
    raster.triangle(at(0, 0), at(20, 0), at(20, 20));
    raster.triangle(at(0, 0), at(20, 20), at(0, 20));
  };
  Raster first(20, 20, 1.0), second(20, 20, 1.0);
  square(first, 1.0, 1.0), square(first, 0.0, 0.2);
  square(second, 0.0, 0.2), square(second, 1.0, 1.0);
  EXPECT_EQ(first.image(), second.image());
  EXPECT_EQ(first.image().pixel(10, 10), map_colour(1.0).rgb());
}

TEST(Raster, HatchesOnlyAboveTheLimit) {
  const auto colours_at = [](double load) {
    Raster raster(60, 60, 1.0);
    const auto at = [&](double x, double y) { return RasterVertex{{x, y, 0.0}, 1.0, 0.5, load}; };
    raster.triangle(at(-100, -100), at(200, -100), at(0, 300));
    std::vector<QRgb> colours;
    for (int x = 0; x < 60; ++x) colours.push_back(raster.image().pixel(x, 30));
    std::sort(colours.begin(), colours.end());
    return std::unique(colours.begin(), colours.end()) - colours.begin();
  };
  EXPECT_EQ(colours_at(0.9), 1);
  EXPECT_GT(colours_at(1.1), 1);
}

}  // namespace
}  // namespace wrapgauge
