// Formulas of the material stage and the units against closed forms and the classic rubber data.
#include <array>

#include "model/material/tissue.hpp"
#include "tests/material/golden_section.hpp"
#include "tests/published/device_fixture.hpp"

namespace wrapgauge::published {
namespace {

const Source kClosed{"Closed forms", "closed form", "derived", {}, "closed_forms_test.cpp"};

TEST(ClosedForm, LaplaceHoldsBetweenTheUnits) {
  expect_derived(4.4444, 0.2 / 0.045, 1.1e-5);
  const Pressure pressure = (0.2 * N_per_mm) / (45.0 * mm);
  expect_within(kClosed, "Laplace, 0.2 N/mm over 45 mm: kPa", pressure / kPa, 4.4444, 1.1e-5);
}

// A closed neo-Hookean cylinder, hoop stretch h and axial stretch a: its end pulls half the hoop tension, so
// a^2 - q = (h^2 - q) / 2 with q = 1/(h a)^2, and pR/(mu t) = (h^2 - q) / (h^2 a). The largest of it by
// stepping.
std::pair<double, double> cylinder_limit() {
  std::pair<double, double> best{1.0, 0.0};
  for (int k = 1; k <= 400000; ++k) {
    const double h = 1.4 + 1e-6 * k;
    double a = 1.0;
    for (int round = 0; round < 40; ++round) {
      const double q = 1.0 / (h * h * a * a);
      a -= (a * a - 0.5 * q - 0.5 * h * h) / (2.0 * a + q / a);
    }
    const double load = (h * h - 1.0 / (h * h * a * a)) / (h * h * a);
    if (load > best.second) best = {h, load};
  }
  return best;
}

TEST(ClosedForm, BalloonsHoldAtMostTheirLimitPressure) {
  // pR/(mu t) = 2 (1/l - 1/l^7) is largest at l^6 = 7; the cylinder's from its two balances by hand.
  const double at = std::pow(7.0, 1.0 / 6.0);
  expect_derived(1.383088, at);
  expect_derived(1.239463, 2.0 * (1.0 / at - std::pow(at, -7)));
  const auto [stretch, load] = cylinder_limit();
  expect_derived(1.57687, stretch);
  expect_derived(.749868, load);
  const HyperelasticLaw law = NeoHookean{Pressure(1.0)};
  const auto sphere =
      maximum([&](double l) { return 2.0 * stretch_energy(law, l, l).w1 / (l * l); }, 1.0, 2.0);
  expect_within(kClosed, "neo-Hookean sphere: stretch at the limit", sphere.first, 1.383088, 1e-5);
  expect_within(kClosed, "neo-Hookean sphere: limit of pR/(μt)", sphere.second, 1.239463, 1e-5);
  // The axial stretch that carries half the hoop force along the length.
  const auto cylinder = maximum(
      [&](double hoop) {
        double axial = 1.0;
        for (int i = 0; i < 50; ++i) {
          const StretchEnergy e = stretch_energy(law, hoop, axial);
          axial -= (axial * e.w2 - 0.5 * hoop * e.w1) / (e.w2 + axial * e.w22 - 0.5 * hoop * e.w12);
        }
        return stretch_energy(law, hoop, axial).w1 / (hoop * axial);
      },
      1.0, 2.5);
  expect_within(kClosed, "neo-Hookean closed cylinder: stretch at the limit", cylinder.first, 1.57687, 1e-5);
  expect_within(kClosed, "neo-Hookean closed cylinder: limit of pR/(μt)", cylinder.second, .749868, 1e-5);
}

TEST(ClosedForm, FoundationIsThatOfABondedLayer) {
  for (const auto& [poisson, modulus] : {std::pair{.3, 3.36538}, {.4, 5.35714}, {.45, 9.48276}}) {
    expect_derived(modulus, (1.0 - poisson) * 50.0 / ((1.0 + poisson) * (1.0 - 2.0 * poisson) * 20.0));
    expect_within(kClosed, "foundation, E 50 kPa, h 20 mm, nu " + number_text(poisson) + ": kPa/mm",
                  *foundation_modulus(50.0 * kPa, poisson, 20.0 * mm) / kPa_per_mm, modulus, 1e-5);
  }
}

TEST(ClosedForm, HardnessFollowsGent) {
  const Source gent{
      "Closed forms", "Gent 1958, formula", "from memory", {"gent1958"}, "closed_forms_test.cpp"};
  const std::vector<double> rows{.41268, .73192, 1.14237, 1.68964, 2.45581, 3.60507, 5.52051};
  for (std::size_t k = 0; k < rows.size(); ++k) {
    const double shore = 10.0 * static_cast<double>(k + 1);
    expect_derived(rows[k], .0981 * (56.0 + 7.62336 * shore) / (.137505 * (254.0 - 2.54 * shore)));
    expect_within(gent, "Shore A " + number_text(shore) + ": E, MPa",
                  *young_modulus_from_shore_a(shore) / MPa, rows[k], 1.5e-5);
  }
}

// Rows, law and coefficients from memory. At stretch 2.17 the law itself, worked by hand, lies 12.9 % above
// the measured row: that one row is accepted up to 13 %.
TEST(ClosedForm, ThreeTermLawFollowsTheRubberData) {
  const Source rubber{"Classic rubber data",
                      "Treloar 1944 measured, Ogden 1972 law",
                      "from memory",
                      {"treloar1944", "ogden1972"},
                      {}};
  const HyperelasticLaw law = Ogden{{{0.63 * MPa, 1.3}, {0.0012 * MPa, 5.0}, {-0.01 * MPa, -2.0}}};
  for (const auto& [l, measured] : std::vector<std::pair<double, double>>{
           {1.24, .23}, {1.61, .42}, {2.17, .58}, {3.01, .85}, {4.03, 1.21}, {5.36, 1.94}, {6.15, 2.67}})
    expect_within(rubber, "pulled one way, stretch " + number_text(l) + ": nominal stress, MPa",
                  stretch_energy(law, l, 1.0 / std::sqrt(l)).w1 * 1e-6, measured, l == 2.17 ? .13 : .12);
  for (const auto& [l, measured] : std::vector<std::pair<double, double>>{
           {1.11, .24}, {1.31, .44}, {1.69, .65}, {2.49, .96}, {3.03, 1.24}, {3.75, 1.72}, {4.26, 2.22}})
    expect_within(rubber, "pulled both ways, stretch " + number_text(l) + ": nominal stress, MPa",
                  stretch_energy(law, l, l).w1 * 1e-6, measured, .12);
}

}  // namespace
}  // namespace wrapgauge::published
