// Clamped disc under pressure. The problem is the classic one of Adkins and Rivlin 1952 ("Large elastic
// deformations of isotropic materials IX", Phil. Trans. R. Soc. A 244); the reference figures are our own
// integration of its ordinary differential equations (membrane_profile.cpp), for membranes without bending.
#include "tests/published/disc_fixture.hpp"
#include "tests/published/membrane_profile.hpp"

namespace wrapgauge::published {
namespace {

const Source kDisc{"Clamped disc, free inflation",
                   "problem of Adkins and Rivlin 1952",
                   "derived",
                   {"adkins1952"},
                   "membrane_profile.cpp"};
const double kCube = std::pow(kDiscRadius, 3);

const HyperelasticLaw kNeoHookean = NeoHookean{Pressure(kDiscShear)};
const InvariantLaw kReferenceNeoHookean{1.0};
// C2/C1 = 0.1, mu = 2 (C1 + C2).
const HyperelasticLaw kMooneyRivlin =
    MooneyRivlin{Pressure(kDiscShear / 2.2), Pressure(0.1 * kDiscShear / 2.2)};
// W = mu/2 (x + 0.02 x^2 + 0.0005 x^3).
const HyperelasticLaw kYeoh =
    Yeoh{Pressure(0.5 * kDiscShear), Pressure(0.01 * kDiscShear), Pressure(0.00025 * kDiscShear)};

struct Row {
  double p, height, volume, pole = 0.0;
};
struct Law {
  const char* name;
  HyperelasticLaw law;
  InvariantLaw reference;
  std::vector<Row> rows;
};

// The stretch at the pole: the pole's triangles grow by its square.
double pole_stretch(const FlatMesh& flat, const LoadPath& path, const EquilibriumState& state) {
  double rest = 0.0, grown = 0.0;
  for (int t : path.sheet.cavities[0].skin_triangles) {
    const auto corners = flat.triangles.row(path.sheet.flat_triangle[t]);
    const auto at = [&](int k) -> Vec3 { return state.positions_m.row(path.sheet.triangles(t, k)); };
    const Vec2 a = flat.vertices_m.row(corners(0)), b = flat.vertices_m.row(corners(1)),
               c = flat.vertices_m.row(corners(2));
    if ((a + b + c).norm() / 3.0 > 0.12 * kDiscRadius) continue;
    const Vec2 p = b - a, q = c - a;
    rest += 0.5 * (p.x() * q.y() - p.y() * q.x());
    grown += 0.5 * (at(1) - at(0)).cross(at(2) - at(0)).norm();
  }
  return std::sqrt(grown / rest);
}

class FreeDisc : public testing::TestWithParam<Law> {};

TEST_P(FreeDisc, RisesAsTheReference) {
  const Law& law = GetParam();
  const InflationSetup setup = disc_setup(law.law, 0.003);
  for (const Row& row : law.rows) {
    const DiscShape reference = disc_of_load(law.reference, row.p, 1.001, 2.19);
    expect_derived(row.height, reference.height);
    expect_derived(row.volume, reference.volume);
    if (row.pole > 0.0) expect_derived(row.pole, reference.pole_stretch);
    const auto path = inflate(setup, {disc_load(row.p)}, membrane_only(1));
    ASSERT_TRUE(path) << path.problem().message;
    ASSERT_FALSE(path->limit_point);
    const EquilibriumState& state = path->states.back();
    const std::string label = std::string(law.name) + ", P " + number_text(row.p);
    expect_within(kDisc, label + ": w0/a", height_m(*path, state) / kDiscRadius, row.height, 0.01);
    expect_within(kDisc, label + ": V/a³", bulge_volume_m3(setup.flat, *path, state) / kCube, row.volume,
                  0.015);
    if (row.pole > 0.0)
      expect_within(kDisc, label + ": pole stretch", pole_stretch(setup.flat, *path, state), row.pole, 0.01);
  }
}

INSTANTIATE_TEST_SUITE_P(Laws, FreeDisc,
                         testing::Values(Law{"neo-Hookean",
                                             kNeoHookean,
                                             kReferenceNeoHookean,
                                             {{0.05, .15573, .25502, 1.01591},
                                              {0.2, .25761, .42860, 1.04405},
                                              {0.5, .37430, .63980, 1.09507},
                                              {1.0, .53121, .95366, 1.20020},
                                              {1.5, .71906, 1.38813, 1.39316}}},
                                         Law{"Mooney-Rivlin 0.1",
                                             kMooneyRivlin,
                                             {1.0 / 1.1, 0.1 / 1.1},
                                             {{0.05, .15564, .25484},
                                              {0.2, .25711, .42762},
                                              {0.5, .37239, .63590},
                                              {1.0, .52304, .93593},
                                              {1.5, .68475, 1.30496}}},
                                         Law{"Yeoh",
                                             kYeoh,
                                             {1.0, 0.0, 0.01, 0.00025},
                                             {{0.05, .15573, .25501},
                                              {0.2, .25754, .42849},
                                              {0.5, .37384, .63897},
                                              {1.0, .52798, .94719},
                                              {1.5, .69923, 1.34197}}}));

TEST(ClampedDisc, NeoHookeanLimitPointIsNamed) {
  const InflationSetup setup = disc_setup(kNeoHookean, 0.003);
  const auto path = inflate(setup, {disc_load(2.2)}, membrane_only(4));
  ASSERT_TRUE(path) << path.problem().message;
  ASSERT_TRUE(path->limit_point);
  expect_derived(1.87917, disc_at_limit(kReferenceNeoHookean, 1.5, 3.0).load);
  expect_within(kDisc, "neo-Hookean: limit pressure P", path->limit_point->pressure / disc_load(1.0), 1.87917,
                0.01);
}

TEST(ClampedDisc, PastTheLimitPointAVolumeHoldsTheLowerPressureAgain) {
  const InflationSetup setup = disc_setup(kNeoHookean, 0.002);
  const auto path = inflate(setup, {Volume(9.0570 * kCube)}, membrane_only(6));
  ASSERT_TRUE(path) << path.problem().message;
  const EquilibriumState& state = path->states.back();
  const DiscShape reference = disc_of_load(kReferenceNeoHookean, 1.5, 2.2, 9.0);
  expect_derived(2.18726, reference.height);
  expect_derived(9.0570, reference.volume);
  expect_within(kDisc, "neo-Hookean, by volume V/a³ 9.057: P",
                Pressure(state.group_pressure_pa(0)) / disc_load(1.0), 1.5, 0.01);
  expect_within(kDisc, "neo-Hookean, by volume V/a³ 9.057: w0/a", height_m(*path, state) / kDiscRadius,
                2.18726, 0.01);
}

TEST(ClampedDisc, LawsThatStiffenHaveNoLimitPoint) {
  for (const auto& [name, law] : {std::pair{"Mooney-Rivlin 0.1", kMooneyRivlin}, {"Yeoh", kYeoh}}) {
    const auto path = inflate(disc_setup(law, 0.004), {disc_load(2.2)}, membrane_only(6));
    ASSERT_TRUE(path) << path.problem().message;
    expect_claim(kDisc, std::string(name) + ": no limit point up to P 2.2", !path->limit_point.has_value());
  }
}

// Hencky's plate without bending; only Poisson ratio 0.5 applies, as every law here is incompressible.
TEST(ClampedDisc, RisesAsHenckyForSmallLoads) {
  const Source hencky{"Small loads on a disc",
                      "Hencky 1915, w0/a = c (pa/Et)^(1/3), nu 0.5; its equation integrated",
                      "derived",
                      {"hencky1915"},
                      "membrane_profile.cpp"};
  expect_derived(.594879, hencky_constants(0.5).height);
  expect_derived(.965163, hencky_constants(0.5).volume);
  const double shear = 30e6;  // hard, so that the load is some kPa
  const InflationSetup setup = disc_setup(NeoHookean{Pressure(shear)}, 0.003);
  for (double p : {0.0005, 0.001, 0.002}) {
    const auto path = inflate(setup, {disc_load(p, shear)}, membrane_only(1));
    ASSERT_TRUE(path) << path.problem().message;
    const EquilibriumState& state = path->states.back();
    const double root = std::cbrt(p / 3.0);
    expect_within(hencky, "P " + number_text(p) + ": c", height_m(*path, state) / kDiscRadius / root, .594879,
                  0.01);
    expect_within(hencky, "P " + number_text(p) + ": cV",
                  bulge_volume_m3(setup.flat, *path, state) / kCube / root, .965163, 0.01);
  }
}

}  // namespace
}  // namespace wrapgauge::published
