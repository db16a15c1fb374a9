// The table of how stiffly a stretched sheet bends against the law that it is made from.
#include "model/inflation/stretched_stiffness.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace wrapgauge {
namespace {

std::vector<HyperelasticLaw> laws() {
  return {NeoHookean{20.0 * kPa}, MooneyRivlin{40.0 * kPa, 10.0 * kPa},
          Yeoh{17.0 * kPa, -0.2 * kPa, 0.023 * kPa}, Ogden{{{75.4 * kPa, 5.836}}},
          Ogden{{{300.0 * kPa, 1.3}, {1.0 * kPa, 5.0}, {-10.0 * kPa, -2.0}}}};
}

Jet<1> ratio(double value) {
  return Jet<1>::variable(value, 0);
}

TEST(StretchedStiffness, OfATableIsTheLawsOwn) {
  for (const HyperelasticLaw& law : laws()) {
    const StretchedStiffness table(law);
    for (double r = 0.3; r < 9.0; r += 0.0137) {
      const Jet<1> exact = stretched_stiffness(law, ratio(r)), at = table.at(ratio(r));
      EXPECT_NEAR(at.value, exact.value, 1e-7 * (1.0 + std::abs(exact.value))) << law_name(law) << " " << r;
      EXPECT_NEAR(at.gradient(0), exact.gradient(0), 1e-5 * (1.0 + std::abs(exact.gradient(0)))) << r;
      EXPECT_NEAR(at.hessian(0, 0), exact.hessian(0, 0), 2e-3 * (1.0 + std::abs(exact.hessian(0, 0)))) << r;
    }
  }
}

TEST(StretchedStiffness, OfATableHasNoLeapsBetweenItsPieces) {
  for (const HyperelasticLaw& law : laws()) {
    const StretchedStiffness table(law);
    for (const double knot : {0.6, 0.62, 1.0, 2.0, 5.98, 6.0}) {
      const Jet<1> below = table.at(ratio(knot - 1e-9)), above = table.at(ratio(knot + 1e-9));
      EXPECT_NEAR(below.value, above.value, 1e-7 * (1.0 + std::abs(above.value)))
          << law_name(law) << " " << knot;
      EXPECT_NEAR(below.gradient(0), above.gradient(0), 1e-6 * (1.0 + std::abs(above.gradient(0))))
          << law_name(law) << " " << knot;
      EXPECT_NEAR(below.hessian(0, 0), above.hessian(0, 0), 1e-5 * (1.0 + std::abs(above.hessian(0, 0))))
          << law_name(law) << " " << knot;
    }
  }
}

// mu t^3 / 3 J^-5 of the neo-Hookean sheet, by hand (docs/05-inflation.md).
TEST(StretchedStiffness, OfNeoHookeanSheetsIsTheFifthPower) {
  const HyperelasticLaw law = NeoHookean{20.0 * kPa};
  const StretchedStiffness table(law);
  for (const double r : {0.8, 1.0, 1.3, 2.0, 3.0})
    EXPECT_NEAR(table.at(ratio(r)).value, std::pow(r, -5.0), 2e-4 + 1e-3 * std::pow(r, -5.0)) << r;
}

}  // namespace
}  // namespace wrapgauge
