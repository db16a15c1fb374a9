// Rigid indenters on an elastic layer.
// Hertz 1882, "Ueber die Beruehrung fester elastischer Koerper"; Boussinesq 1885 (flat punch); both as in
// Johnson 1985, "Contact Mechanics", chapters 3 and 4 (formulas from memory). Wide contact: the confined
// foundation.
#include "model/material/tissue.hpp"
#include "tests/published/device_fixture.hpp"
#include "tests/published/rigid_indentation.hpp"

namespace wrapgauge::published {
namespace {

Source indenter(const std::string& words, const std::vector<std::string>& keys) {
  return {"Indenters on the tissue layer", words, "derived", keys, "layer_indentation_test.cpp"};
}
const Source kHertz = indenter("Hertz's sphere, closed form", {"hertz1882", "johnson1985"});
const Source kPunch = indenter("Boussinesq's flat punch, closed form", {"boussinesq1885", "johnson1985"});
const Source kBonded = indenter("bonded layer under a wide punch, closed form", {"johnson1985"});

constexpr double kYoung = 50e3, kLoad = 0.05;

// Rings of places on a disc, each with its share of the area; about `rings` across the radius.
SkinPlaces disc_places(double radius_m, int rings) {
  std::vector<Vec3> points;
  std::vector<double> areas;
  for (int ring = 0; ring < rings; ++ring) {
    const double inner = radius_m * ring / rings, outer = radius_m * (ring + 1) / rings;
    const int count = ring == 0 ? 1 : static_cast<int>(std::lround(2.0 * M_PI * (ring + 0.5)));
    const double r = ring == 0 ? 0.0 : 0.5 * (inner + outer);
    for (int k = 0; k < count; ++k) {
      const double angle = 2.0 * M_PI * (k + 0.37 * ring) / count;
      points.emplace_back(r * std::cos(angle), r * std::sin(angle), 0.0);
      areas.push_back(M_PI * (outer * outer - inner * inner) / count);
    }
  }
  SkinPlaces places{Points3(points.size(), 3), Points3(points.size(), 3), Eigen::VectorXd(points.size())};
  for (std::size_t k = 0; k < points.size(); ++k) {
    const auto row = static_cast<Eigen::Index>(k);
    places.points_m.row(row) = points[k].transpose();
    places.normals.row(row) << 0.0, 0.0, 1.0;
    places.area_m2(row) = areas[k];
  }
  return places;
}

Eigen::VectorXd sphere_rise(const SkinPlaces& places, double radius_m) {
  return places.points_m.leftCols<2>().rowwise().squaredNorm() / (2.0 * radius_m);
}

TissueLayer layer(const SkinPlaces& places, double poisson, double depth_m) {
  return {kYoung, poisson, Eigen::VectorXd::Constant(places.area_m2.size(), depth_m)};
}

// Contact radius from the mean square radius of the force: 2/5 a^2 under a Hertz pressure.
double hertz_radius(const SkinPlaces& places, const RigidIndentation& found) {
  const Eigen::VectorXd square = places.points_m.leftCols<2>().rowwise().squaredNorm();
  return std::sqrt(2.5 * found.force_n.dot(square) / found.force_n.sum());
}

// Mean pressure within `radius_m` of the middle.
double middle_pressure(const SkinPlaces& places, const RigidIndentation& found, double radius_m) {
  double force = 0.0, area = 0.0;
  for (Eigen::Index k = 0; k < found.force_n.size(); ++k)
    if (places.points_m.row(k).head<2>().norm() < radius_m) {
      force += found.force_n(k);
      area += places.area_m2(k);
    }
  return force / area;
}

TEST(LayerIndentation, SphereOnDeepTissueIsHertz) {
  const double radius = 0.020, contact_radius = 2.24070e-3;
  const double modulus = kYoung / 0.75;  // of a half space with Poisson ratio 0.5
  expect_derived(1e3 * contact_radius, 1e3 * std::cbrt(0.75 * kLoad * radius / modulus));
  expect_derived(4.75492, 1.5e-3 * kLoad / (M_PI * std::pow(contact_radius, 2)), 1e-5);
  const SkinPlaces places = disc_places(0.0030, 16);
  const auto found = press_rigid(layer(places, 0.5, 2.0), places, sphere_rise(places, radius), kLoad);
  ASSERT_TRUE(found) << found.problem().message;
  expect_within(kHertz, "Hertz contact radius, mm", 1e3 * hertz_radius(places, *found), 1e3 * contact_radius,
                0.01);
  expect_within(kHertz, "Hertz approach a2/R, mm", 1e3 * found->depth_m,
                1e3 * std::pow(contact_radius, 2) / radius, 0.01);
  // p0 sqrt(1 - r2/a2) over the inner disc of 8 of the 16 rings.
  const double q2 = std::pow(0.0015 / contact_radius, 2);
  const double share = 2.0 / 3.0 * (1.0 - std::pow(1.0 - q2, 1.5)) / q2;
  expect_within(kHertz, "Hertz p0 from the middle, kPa",
                1e-3 * middle_pressure(places, *found, 0.0015) / share, 4.75492, 0.02);
}

TEST(LayerIndentation, FlatPunchOnDeepTissueIsBoussinesq) {
  const double radius = 0.005, contact_modulus = kYoung / 0.75;
  const SkinPlaces places = disc_places(radius, 24);
  const Eigen::VectorXd flat = Eigen::VectorXd::Zero(places.area_m2.size());
  const auto found = press_rigid(layer(places, 0.5, 5.0), places, flat, kLoad);
  ASSERT_TRUE(found) << found.problem().message;
  expect_within(kPunch, "flat punch force / (2 a E* depth)",
                kLoad / (2.0 * radius * contact_modulus * found->depth_m), 1.0, 0.02);
  // F / (2 pi a2 sqrt(1 - r2/a2)) over the inner half.
  const double share = (1.0 - std::sqrt(0.75)) / 0.25;
  expect_within(kPunch, "flat punch pressure inside a/2 over mean",
                middle_pressure(places, *found, 0.5 * radius) / (kLoad / (M_PI * radius * radius)), share,
                0.02);
}

TEST(LayerIndentation, FlatPunchWideAgainstTheDepthIsTheConfinedFoundation) {
  for (const double poisson : {0.0, 0.3, 0.45, 0.48}) {
    const double radius = 0.045, depth = 0.003;
    const SkinPlaces places = disc_places(radius, 24);
    const Eigen::VectorXd flat = Eigen::VectorXd::Zero(places.area_m2.size());
    const auto found = press_rigid(layer(places, poisson, depth), places, flat, 5.0);
    ASSERT_TRUE(found) << found.problem().message;
    const double foundation = foundation_modulus(Pressure(kYoung), poisson, Length(depth)).value().si();
    expect_within(kBonded,
                  "punch 15 depths wide, nu " + std::to_string(poisson) + ": middle pressure / (K depth)",
                  middle_pressure(places, *found, 0.2 * radius) / (foundation * found->depth_m), 1.0, 0.03);
  }
}

TEST(LayerIndentation, RefusesWhatIsNoLayer) {
  const SkinPlaces places = disc_places(0.003, 2);
  const Eigen::VectorXd flat = Eigen::VectorXd::Zero(places.area_m2.size());
  EXPECT_FALSE(press_rigid(layer(places, 0.6, 0.01), places, flat, kLoad));
  EXPECT_FALSE(press_rigid(layer(places, 0.3, 0.0), places, flat, kLoad));
  EXPECT_FALSE(press_rigid(layer(places, 0.3, 0.01), places, flat, 0.0));
  EXPECT_FALSE(press_rigid(layer(places, 0.3, 0.01), places, Eigen::VectorXd::Zero(1), kLoad));
}

}  // namespace
}  // namespace wrapgauge::published
