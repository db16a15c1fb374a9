// Clamped disc pressed on a rigid frictionless plate: own integration of the membrane equations
// (membrane_profile.cpp; the free part is the problem of Adkins and Rivlin 1952, the patch is flat).
#include "tests/published/disc_fixture.hpp"
#include "tests/published/membrane_profile.hpp"

namespace wrapgauge::published {
namespace {

const Source kPlate{"Disc pressed on a rigid frictionless plate",
                    "problem of Adkins and Rivlin 1952 with a flat patch",
                    "derived",
                    {"adkins1952"},
                    "membrane_profile.cpp"};
const InvariantLaw kReferenceNeoHookean{1.0};

TEST(DiscOnPlate, TouchesAtTheReferenceLoad) {
  const InflationSetup setup = disc_setup(NeoHookean{Pressure(kDiscShear)}, 0.003);
  for (const auto& [p, distance] : {std::pair{.101064, .2}, {.578834, .4}}) {
    expect_derived(p, disc_of_height(kReferenceNeoHookean, distance).load);
    const auto path = inflate(setup, {disc_load(p)}, membrane_only(2));
    ASSERT_TRUE(path) << path.problem().message;
    expect_within(kPlate, "touch, P " + number_text(p) + ": d/a",
                  height_m(*path, path->states.back()) / kDiscRadius, distance, 0.01);
  }
}

struct Row {
  double distance, p, contact_radius, force, volume;
};
class DiscOnPlate : public testing::TestWithParam<Row> {};

TEST_P(DiscOnPlate, PressesAsTheReference) {
  const Row row = GetParam();
  const DiscShape reference = disc_on_plate(kReferenceNeoHookean, row.p, row.distance);
  expect_derived(row.contact_radius, reference.patch_radius);
  expect_derived(row.force, reference.force);
  expect_derived(row.volume, reference.volume);
  InflationSetup setup = disc_setup(NeoHookean{Pressure(kDiscShear)}, 0.002);
  press_on(setup, std::make_shared<PlateBelow>(-row.distance * kDiscRadius), kRigidPaPerM);
  const auto path = inflate(setup, {disc_load(row.p)}, membrane_only(2));
  ASSERT_TRUE(path) << path.problem().message;
  const EquilibriumState& state = path->states.back();
  const std::string label = "d/a " + number_text(row.distance) + ", P " + number_text(row.p) + ": ";
  const double force = contact_force_n(state);
  expect_within(kPlate, label + "F/(μta)", force / (kDiscShear * kDiscThickness * kDiscRadius), row.force,
                row.p == 1.0 && row.distance == 0.4 ? 0.03 : 0.02);
  expect_within(kPlate, label + "patch radius/a (from force over pressure)",
                std::sqrt(force / (M_PI * disc_load(row.p).si())) / kDiscRadius, row.contact_radius, 0.015);
  expect_within(kPlate, label + "V/a³", bulge_volume_m3(setup.flat, *path, state) / std::pow(kDiscRadius, 3),
                row.volume, 0.015);
  double worst = 0.0;
  for (Eigen::Index v = 0; v < state.contact_pressure_pa.size(); ++v)
    if (setup.flat.vertices_m.row(v).norm() < 0.6 * row.contact_radius * kDiscRadius)
      worst = std::max(worst, std::abs(state.contact_pressure_pa(v) / disc_load(row.p).si() - 1.0));
  expect_within(kPlate, label + "contact pressure/p, worst in the patch", 1.0 + worst, 1.0, 0.005);
}

INSTANTIATE_TEST_SUITE_P(
    Rows, DiscOnPlate,
    testing::Values(Row{.2, .5, .539807, .457717, .465123}, Row{.2, 1, .663653, 1.38367, .512886},
                    Row{.2, 2, .766727, 3.6937, .558339}, Row{.2, 4, .860482, 9.30451, .608027},
                    Row{.4, 1, .336049, .354777, .838186}, Row{.4, 4, .814204, 8.33059, 1.29393}));

}  // namespace
}  // namespace wrapgauge::published
