// Our sheets with bending against a three-dimensional solid solved while the test runs.
#include "tests/published/disc_fixture.hpp"
#include "tests/published/solid_model.hpp"
#include "tests/published/square_fixture.hpp"

namespace wrapgauge::published {
namespace {

const Source kSolid{"Against a solid solved by CalculiX while the test runs",
                    "CalculiX (calculix-ccx), 20-node bricks, neo-Hookean, nu 0.4995",
                    "derived",
                    {"dhondt2004"},
                    "solid_model.cpp"};

class AgainstASolid : public testing::Test {
 protected:
  void SetUp() override {
    if (SolidModel::installed()) return;
    std::cout << "  NOT CHECKED: CalculiX is not installed (Debian package calculix-ccx); sh tests/run.sh "
                 "installs it.\n";
    GTEST_SKIP() << "calculix-ccx is not installed";
  }
};

InflationOptions with_bending(int steps) {
  InflationOptions options = membrane_only(steps);
  options.bending = options.contact_offset = true;
  return options;
}

InflationSetup square_on_plate(Length edge) {
  InflationSetup setup = square_setup(edge, 2.5 * mm);
  press_on(setup, std::make_shared<PlateBelow>(-0.006), kRigidPaPerM);
  return setup;
}

InflationSetup disc_on_plate(Length edge) {
  const int sides = std::max(48, static_cast<int>(std::lround(2.0 * M_PI * kDiscRadius / edge.si())));
  InflationSetup setup =
      disc_setup(NeoHookean{Pressure(kDiscShear)}, {.edge = edge, .seam_edge = edge}, sides);
  press_on(setup, std::make_shared<PlateBelow>(-0.006), kRigidPaPerM);
  return setup;
}

double force_n(const InflationSetup& setup, Pressure pressure) {
  const auto path = inflate(setup, {pressure}, with_bending(2));
  if (!path) ADD_FAILURE() << path.problem().message;
  return path ? contact_force_n(path->states.back()) : 0.0;
}

double square_height_m(Length edge, const InflationOptions& options) {
  const auto path = inflate(square_setup(edge), {2.0 * kPa}, options);
  if (!path) ADD_FAILURE() << path.problem().message;
  return path ? height_m(*path, path->states.back()) : 0.0;
}

std::string at_edge(double edge_mm) {
  return ", mesh of " + number_text(edge_mm) + " mm";
}

TEST_F(AgainstASolid, AClampedSquareRisesAlike) {
  std::string problem;
  const std::optional<double> rise_mm = quarter_square({.cells = 8}, problem);
  ASSERT_TRUE(rise_mm) << problem;
  const std::string square = "clamped square 60 × 60 × 1.5 mm, 2 kPa";
  for (const double edge_mm : {4.0, 1.5})
    expect_within(kSolid, square + at_edge(edge_mm) + ": rise, mm",
                  square_height_m(edge_mm * mm, with_bending(2)) / 1e-3, *rise_mm, 0.01);
  expect_within(kSolid, square + ", without bending: rise, mm",
                square_height_m(1.5 * mm, membrane_only(2)) / 1e-3, *rise_mm, 0.05);
}

TEST_F(AgainstASolid, AClampedSquarePressesAPlateAlike) {
  std::string problem;
  const std::optional<double> solid_n =
      quarter_square({.thickness_mm = 2.5, .cells = 8, .plate_mm = 6.0}, problem);
  ASSERT_TRUE(solid_n) << problem;
  for (const double edge_mm : {4.0, 3.0, 2.0, 1.5})
    expect_within(kSolid,
                  "square 60 × 60 × 2.5 mm on a plate 6 mm away, 2 kPa" + at_edge(edge_mm) + ": force, N",
                  force_n(square_on_plate(edge_mm * mm), 2.0 * kPa), *solid_n, 0.03);
}

TEST_F(AgainstASolid, ADiscPressesAPlateAlike) {
  constexpr double kP = 1.0, kDistance = 0.2, kAngle = 5.0 * M_PI / 180.0;
  constexpr double kHoleMm = 0.3;  // a sector needs a small hole, plugged
  constexpr int kCells = 40, kLayers = 2;
  const double pressure_mpa = disc_load(kP) / MPa, radius_mm = kDiscRadius / 1e-3;
  SolidModel solid({kCells, 1, kLayers, [&](double u, double v, double w) {
                      const double r = kHoleMm + (radius_mm - kHoleMm) * graded(u, kCells);
                      return Vec3(r * std::cos(kAngle * v), r * std::sin(kAngle * v),
                                  1.5 * (w / kLayers - 0.5));
                    }});
  const auto clamped = solid.nodes_where([](int u, int, int) { return u == 2 * kCells; });
  solid.use_polar_directions();
  solid.hold(solid.nodes_where([](int, int, int) { return true; }), 2, 2);
  solid.hold(solid.nodes_where([](int u, int, int) { return u == 0; }), 1, 1);
  solid.hold(clamped, 1, 3);
  solid.add_plate_below(kDistance * radius_mm);
  std::string problem;
  const auto answer = solid.solve(0.03, pressure_mpa, true, clamped, problem);
  ASSERT_TRUE(answer) << problem;
  const double whole = 2.0 * M_PI / kAngle;
  const double pushed = pressure_mpa * M_PI * (radius_mm * radius_mm - kHoleMm * kHoleMm);
  const double solid_force = pushed - whole * answer->clamp_force_n.z();
  for (const double edge_mm : {8.0, 6.0, 4.0, 3.0, 2.0, 1.5})
    expect_within(kSolid, "disc 30 × 1.5 mm on a plate 6 mm away, 1.5 kPa" + at_edge(edge_mm) + ": force, N",
                  force_n(disc_on_plate(edge_mm * mm), disc_load(kP)), solid_force,
                  edge_mm > 4.0 ? 0.05 : 0.02);
}

}  // namespace
}  // namespace wrapgauge::published
