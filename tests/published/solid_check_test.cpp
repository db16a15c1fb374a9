// Our sheets with bending against a three-dimensional solid solved while the test runs.
#include "tests/published/disc_fixture.hpp"
#include "tests/published/solid_model.hpp"
#include "tests/published/square_fixture.hpp"

namespace wrapgauge::published {
namespace {

const Source kSolid{"Against a solid solved by CalculiX while the test runs",
                    "CalculiX (calculix-ccx), 20-node bricks, neo-Hookean, nu 0.495",
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

double square_height_m(const InflationOptions& options) {
  const auto path = inflate(square_setup(), {2.0 * kPa}, options);
  if (!path) ADD_FAILURE() << path.problem().message;
  return path ? height_m(*path, path->states.back()) : 0.0;
}

TEST_F(AgainstASolid, AClampedSquareRisesAlike) {
  std::string problem;
  const std::optional<double> rise_mm = quarter_square_rise_mm(8, problem);
  ASSERT_TRUE(rise_mm) << problem;
  const std::string square = "clamped square 60 × 60 × 1.5 mm, 2 kPa";
  expect_within(kSolid, square + ": rise, mm", square_height_m(with_bending(2)) / 1e-3, *rise_mm, 0.03);
  expect_within(kSolid, square + ", without bending: rise, mm", square_height_m(membrane_only(2)) / 1e-3,
                *rise_mm, 0.05);
}

TEST_F(AgainstASolid, ADiscPressesAPlateAlike) {
  constexpr double kP = 1.0, kDistance = 0.2, kAngle = 5.0 * M_PI / 180.0;
  constexpr double kHoleMm = 0.3;  // a sector needs a small hole, plugged
  constexpr int kCells = 40;
  const double pressure_mpa = disc_load(kP) / MPa, radius_mm = kDiscRadius / 1e-3;
  SolidModel solid({kCells, 1, [&](double u, double v, double w) {
                      const double r = kHoleMm + (radius_mm - kHoleMm) * u / kCells;
                      return Vec3(r * std::cos(kAngle * v), r * std::sin(kAngle * v), 1.5 * (w - 0.5));
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

  InflationSetup setup = disc_setup(NeoHookean{Pressure(kDiscShear)}, 0.002);
  press_on(setup, std::make_shared<PlateBelow>(-kDistance * kDiscRadius), kRigidPaPerM);
  const auto path = inflate(setup, {disc_load(kP)}, with_bending(2));
  ASSERT_TRUE(path) << path.problem().message;
  expect_within(kSolid, "disc 30 × 1.5 mm on a plate 6 mm away, 1.5 kPa: force, N",
                contact_force_n(path->states.back()), solid_force, 0.10);
}

}  // namespace
}  // namespace wrapgauge::published
