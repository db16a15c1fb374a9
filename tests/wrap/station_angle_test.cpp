#include "model/wrap/station_angle.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "bodyforms/form.hpp"
#include "tests/geometry/shapes.hpp"

namespace wrapgauge {
namespace {

// Tape values of parameters that have no default, millimetres, from memory of what is usual.
std::map<std::string, double> measures_of(const Form& form) {
  std::map<std::string, double> measures;
  for (const FormParameter& parameter : form.parameters)
    if (!parameter.default_value)
      measures[parameter.name] = std::clamp(300.0, parameter.least, parameter.most);
  return measures;
}

// 200 places: five stations, forty angles that are no multiples of a facet.
TEST(StationAngle, TheWayThereAndBackEndsAtTheSamePlaceOnEveryForm) {
  for (const Form& form : forms()) {
    const auto body = make_form(form.name, measures_of(form));
    ASSERT_TRUE(body) << form.name << ": " << body.problem().message;
    const BodySurface surface(*body);
    for (int row = 1; row <= 5; ++row) {
      for (int column = 0; column < 40; ++column) {
        const AnchorAtStation asked{Length(surface.last_station_m() * (0.04 + 0.92 * (row - 0.5) / 5.0)),
                                    9.0 * column + 1.37};
        const auto point = skin_point_at(surface, asked);
        ASSERT_TRUE(point) << form.name << ": " << point.problem().message;
        const auto found = station_and_angle(surface.sections(), surface.axis(), point->point_m);
        ASSERT_TRUE(found) << form.name << ": " << found.problem().message;
        EXPECT_NEAR(found->station / mm, asked.station / mm, 1e-6) << form.name;
        EXPECT_NEAR(std::remainder(found->angle_deg - asked.angle_deg, 360.0), 0.0, 1e-5) << form.name;
        const auto again = skin_point_at(surface, *found);
        ASSERT_TRUE(again) << form.name;
        EXPECT_LT((again->point_m - point->point_m).norm(), 1e-8) << form.name << " at " << asked.angle_deg;
      }
    }
  }
}

// A limb whose middle lies 10 mm beside its axis: angles count about the middle, right-handed.
TEST(StationAngle, AnglesCountAboutTheMiddleOfTheSection) {
  Body body;
  body.surface = shapes::tube(0.04, 0.04, 0.2, 360, 20);
  body.axis.origin_m = {0.01, 0.0, 0.0};
  const BodySurface surface(body);
  const auto angle_at = [&](const Vec3& point_m) {
    const auto place = station_and_angle(surface.sections(), surface.axis(), point_m);
    return place ? place->angle_deg : -1.0;
  };
  EXPECT_NEAR(std::remainder(angle_at({0.04, 0.0, 0.1}), 360.0), 0.0, 1e-6);
  EXPECT_NEAR(angle_at({0.0, 0.04, 0.1}), 90.0, 1e-6);
  EXPECT_NEAR(angle_at({-0.04, 0.0, 0.1}), 180.0, 1e-6);
  EXPECT_NEAR(angle_at({0.0, -0.04, 0.1}), 270.0, 1e-6);
}

TEST(StationAngle, APlaceWithoutAClosedSectionHasNoAngle) {
  Body body;
  body.surface = shapes::tube(0.04, 0.04, 0.2, 90, 20);
  const BodySurface surface(body);
  const auto beyond = station_and_angle(surface.sections(), surface.axis(), {0.04, 0.0, 0.25});
  ASSERT_FALSE(beyond);
  EXPECT_NE(beyond.problem().message.find("no closed section at the anchor's station of 250.0 mm"),
            std::string::npos)
      << beyond.problem().message;
}

}  // namespace
}  // namespace wrapgauge
