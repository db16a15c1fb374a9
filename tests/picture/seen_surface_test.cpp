#include "app/picture/seen_surface.hpp"

#include <gtest/gtest.h>

#include "app/picture/colour_map.hpp"

namespace wrapgauge {
namespace {

// A square 40 pixels wide and high, facing the eye; pressure grows from left to right.
struct PressedSquare {
  Points3 points_m{{0.0, 0.0, 0.0}, {0.04, 0.0, 0.0}, {0.04, 0.04, 0.0}, {0.0, 0.04, 0.0}};
  Points3 normals{{0.0, 0.0, 1.0}, {0.0, 0.0, 1.0}, {0.0, 0.0, 1.0}, {0.0, 0.0, 1.0}};
  Triangles triangles{{0, 1, 2}, {0, 2, 3}};
  LimbView view{Mat3::Identity(), Vec3(0.02, 0.02, 0.0), 1000.0, 60, 60};
  Raster raster{60, 60, 2.0};

  SeenSurface seen() const {
    SeenSurface surface = seen_surface(points_m, normals, view);
    surface.pressure_pa = Eigen::Vector4d(0.0, 2.0, 2.0, 0.0);
    surface.load = surface.pressure_pa;  // the limit is met at 1
    return surface;
  }
};

TEST(SeenSurface, StandsWhereTheViewShowsItAndIsBareSkinUntilItIsPressed) {
  PressedSquare square;
  draw_skin({square.points_m, square.triangles}, square.normals, square.view, square.raster);
  const QImage image = square.raster.image();
  const double shade = shade_of(Vec3::UnitZ());
  EXPECT_EQ(image.pixelColor(30, 30).red(), static_cast<int>(kBareSkin.red() * shade));
  EXPECT_EQ(image.pixelColor(11, 49).alpha(), 255);
  EXPECT_EQ(image.pixelColor(8, 30).alpha(), 0);
  EXPECT_EQ(image.pixelColor(30, 52).alpha(), 0);
}

TEST(SeenSurface, WhatFacesTheEyeIsBroughtNearerAndItsBackIsNot) {
  const PressedSquare square;
  Points3 turned = square.normals;
  turned.row(3) = -Vec3::UnitZ();
  const SeenSurface lifted = seen_surface(square.points_m, turned, square.view, 3.0);
  EXPECT_DOUBLE_EQ(lifted.at(0, 2), 3.0);
  EXPECT_DOUBLE_EQ(lifted.at(3, 2), 0.0);
}

TEST(SeenSurface, PressureIsColouredByTheMapAndHatchedAboveTheLimit) {
  PressedSquare square;
  SeenSurface seen = square.seen();
  seen.shade.setOnes();
  draw_surface(square.triangles, seen, square.raster);
  const QImage image = square.raster.image();
  EXPECT_NEAR(image.pixelColor(20, 30).red(), map_colour(0.2625).red(), 2);  // at 10.5 of 40 pixels
  int hatched = 0, unhatched = 0;
  for (int y = 12; y < 48; ++y) {
    hatched += image.pixelColor(45, y) == QColor(250, 250, 250);
    unhatched +=
        image.pixelColor(15, y) == QColor(250, 250, 250) || image.pixelColor(15, y) == QColor(25, 20, 30);
  }
  EXPECT_GT(hatched, 2);
  EXPECT_EQ(unhatched, 0);
}

TEST(LimitContour, RunsWhereTheLoadIsOne) {
  PressedSquare square;
  const LimitContour contour(square.triangles, square.seen());
  const auto middles = contour.middles();
  ASSERT_EQ(middles.size(), 2U);  // a piece a triangle
  for (const RasterPoint& middle : middles) EXPECT_NEAR(middle.x, 30.0, 1e-9);
  EXPECT_NEAR(middles[0].y + middles[1].y, 60.0, 1e-9);
}

}  // namespace
}  // namespace wrapgauge
