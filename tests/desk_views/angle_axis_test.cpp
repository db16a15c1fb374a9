#include "app/desk/views/angle_axis.hpp"

#include <QSignalSpy>
#include <QTest>
#include <cmath>
#include <numbers>

#include "model/body/axis_angle.hpp"
#include "with_flat_view.hpp"

namespace wrapgauge {
namespace {

// Bonded to a cylinder of radius r the layout turns by x/r: an arc's length.
TEST(AngleAxis, OnACylinderAnglesRunAsTheArcDoes) {
  WithFlatView with;
  with.open();
  const auto angles = angles_along_layout(with.shown);
  ASSERT_GT(angles.size(), 10u);
  const auto& points = with.shown.body()->surface.vertices_m;
  const double radius_m =
      (points.rowwise() - points.colwise().mean()).leftCols(2).rowwise().norm().maxCoeff();
  const AngleAtX &first = angles.front(), &last = angles.back();
  const double arc_deg = (last.x_m - first.x_m) / radius_m * 180.0 / std::numbers::pi;
  EXPECT_NEAR(std::abs(last.angle_deg - first.angle_deg), arc_deg, 0.02 * arc_deg);
  const double middle = *angle_at(angles, 0.0);
  EXPECT_NEAR(std::remainder(middle, 360.0), 0.0, 1.0) << "the anchor lies at angle 0";
}

TEST(AngleAxis, AnAngleIsFoundAgainAtItsPlaceTurnsOffToo) {
  const std::vector<AngleAtX> falling{{-0.1, 400.0}, {0.0, 220.0}, {0.1, 50.0}};
  for (const double x : {-0.1, -0.03, 0.0, 0.07, 0.1}) {
    const double angle = *angle_at(falling, x);
    EXPECT_NEAR(*x_at(falling, angle), angle > 410.0 - 1e-9 ? *x_at(falling, angle - 360.0) : x, 1e-12);
    EXPECT_NEAR(*x_at(falling, angle - 720.0), *x_at(falling, angle), 1e-12);
  }
  EXPECT_FALSE(angle_at(falling, 0.11));
  EXPECT_FALSE(x_at({{0.0, 10.0}, {0.1, 40.0}}, 60.0));
}

TEST(AngleAxis, AHandOnItAsksForTheBodyFromThere) {
  WithFlatView with;
  with.open();
  QSignalSpy asked(&with.view, &FlatView::lookAsked);
  const double x_m = 0.02;
  const QPoint at(qRound(with.view.pixel_at(x_m)), qRound(with.view.axis_y()));
  QTest::mouseClick(with.view.viewport(), Qt::LeftButton, {}, at);
  ASSERT_GE(asked.size(), 1);
  const Axis& axis = with.shown.body()->axis;
  const double angle = angle_about_deg(axis.direction, asked[0][0].value<Vec3>());
  EXPECT_NEAR(std::remainder(angle - *angle_at(with.view.angles(), x_m), 360.0), 0.0, 1.0);
  EXPECT_FALSE(with.view.chosen_part()) << "a part was chosen as well";
}

TEST(AngleAxis, TheOutwardOfAnAngleHasThatAngle) {
  const Axis axis{Vec3(0.1, 0.2, 0.3), Vec3(0.3, -0.5, 0.7).normalized()};
  for (const double angle : {0.0, 30.0, 135.0, 300.0})
    EXPECT_NEAR(angle_about_deg(axis.direction, outward_at(axis, angle)), angle, 1e-9);
}

}  // namespace
}  // namespace wrapgauge
