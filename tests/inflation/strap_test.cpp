// A strap pulls as its plan says: Laplace's p = T/r round a limb, T by the strap's own law and stretch.
#include <gtest/gtest.h>

#include <cmath>

#include "model/inflation/membrane_stress.hpp"
#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

constexpr double kLimb = 0.040, kPad = 0.060, kWidth = 0.030, kStiffness = 5e3;  // N/m of width

// A pad with a small empty chamber, and a straight strap that goes on from it all the way round.
InflationSetup strapped(double length_m) {
  InflationSetup setup;
  setup.layout.outline_m = small::rectangle(0.0, 0.0, kPad, kWidth);
  setup.layout.chambers.push_back({"one", small::rectangle(0.015, 0.008, 0.045, 0.022), {}, {}});
  setup.layout.inlets.push_back({"inlet", {0.030, 0.015}});
  setup.layout.straps.push_back(
      {"strap", small::rectangle(kPad, 0.0, length_m, kWidth), LineTension(kStiffness), 1.5 * mm});
  setup.layout.skin_sheet = setup.layout.outer_sheet = {"soft", 1.5 * mm};
  setup.layout.backing = {LineTension(kStiffness), LineTension(kStiffness)};
  setup.layout.closure = Closure{0.0, Length(length_m), std::nullopt};
  FlatMeshOptions options;
  options.edge = options.seam_edge = 6.0 * mm;
  setup.flat = triangulate_layout(setup.layout, Length(length_m), options).value();
  setup.skin_law = setup.outer_law = NeoHookean{30.0 * kPa};
  small::lay_round(setup, kLimb, length_m);
  setup.body = std::make_shared<small::RoundLimb>(kLimb);
  setup.foundation_pa_per_m = Eigen::VectorXd::Constant(setup.flat.vertices_m.rows(), 2e7);
  return setup;
}

TEST(Strap, PullsAsThePlanSays) {
  for (double stretch : {1.02, 1.05}) {
    const InflationSetup setup = strapped(2.0 * M_PI * (kLimb + 0.75e-3) / stretch);
    InflationOptions options;
    options.steps = 1;
    const auto path = inflate(setup, {Pressure(0.0)}, options);
    ASSERT_TRUE(path) << path.problem().message;
    const EquilibriumState& worn = path->states.front();
    // Along the middle of the strap: length of the skin's force, and the strap's own stretch there.
    const double from = kPad + 0.05, to = kPad + 0.13;
    double outward_n = 0.0, stretch_sum = 0.0, radius_sum = 0.0, area_sum = 0.0;
    for (Eigen::Index t = 0; t < path->sheet.triangles.rows(); ++t) {
      const auto flat = setup.flat.triangles.row(path->sheet.flat_triangle[static_cast<std::size_t>(t)]);
      Eigen::Matrix2d rest;
      Eigen::Matrix<double, 3, 2> now;
      double x = 0.0, radius = 0.0;
      for (int c = 0; c < 3; ++c) {
        x += setup.flat.vertices_m(flat(c), 0) / 3.0;
        radius += worn.positions_m.row(path->sheet.triangles(t, c)).head<2>().norm() / 3.0;
      }
      if (x < from || x > to) continue;
      for (int k = 0; k < 2; ++k) {
        rest.col(k) =
            (setup.flat.vertices_m.row(flat(k + 1)) - setup.flat.vertices_m.row(flat(0))).transpose();
        now.col(k) = (worn.positions_m.row(path->sheet.triangles(t, k + 1)) -
                      worn.positions_m.row(path->sheet.triangles(t, 0)))
                         .transpose();
      }
      const double area = 0.5 * rest.determinant();
      stretch_sum += area * (now * rest.inverse()).col(0).norm();
      radius_sum += area * radius;
      area_sum += area;
      double pressure = 0.0;
      for (int c = 0; c < 3; ++c) pressure += worn.contact_pressure_pa(flat(c)) / 3.0;
      const Vec3 a = now.col(0), b = now.col(1);
      outward_n += pressure * 0.5 * a.cross(b).norm();
    }
    const double pulled = stretch_sum / area_sum, radius = radius_sum / area_sum;
    const double tension = kStiffness * 0.5 * (pulled * pulled - 1.0) * pulled;  // N/m of width
    // p r, with what the skin bears on the deformed area (stretched along, the width as drawn).
    const double laplace = outward_n / (area_sum * pulled) * radius;
    std::cout << "  stretched by " << pulled << ": " << laplace << " N/m against " << tension
              << " by the plan\n";
    EXPECT_NEAR(laplace / tension, 1.0, 0.01);
  }
}

}  // namespace
}  // namespace wrapgauge
