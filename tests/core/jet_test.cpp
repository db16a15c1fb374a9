// Derivatives carried by arithmetic against central finite differences.
#include "model/core/jet.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

template <class Number>
Number formula(const Number& x, const Number& y) {
  using std::pow, std::sin, std::sqrt;
  return -sin(x * y) / (1.0 + sqrt(x + 2.0 * y * y)) + pow(x, -2.5) * y - x / y + 3.0;
}

TEST(Jet, CarriesTheDerivativesOfItsArithmetic) {
  constexpr double kX = 0.7, kY = 1.3, kStep = 1e-4;
  const auto at = [](double x, double y) { return formula(Jet<2>::variable(x, 0), Jet<2>::variable(y, 1)); };
  const Jet<2> here = at(kX, kY);
  EXPECT_EQ(here.value, formula(kX, kY));
  for (int k = 0; k < 2; ++k) {
    const double dx = k == 0 ? kStep : 0.0, dy = k == 1 ? kStep : 0.0;
    const Jet<2> up = at(kX + dx, kY + dy), down = at(kX - dx, kY - dy);
    EXPECT_NEAR(here.gradient(k), (up.value - down.value) / (2 * kStep), 1e-6);
    for (int j = 0; j < 2; ++j)
      EXPECT_NEAR(here.hessian(j, k), (up.gradient(j) - down.gradient(j)) / (2 * kStep), 1e-5);
  }
}

TEST(Jet, OfANumberDoesNotChange) {
  const Jet<2> seven = Jet<2>(7.0) * 2.0;
  EXPECT_EQ(seven.value, 14.0);
  EXPECT_TRUE(seven.gradient.isZero() && seven.hessian.isZero());
}

}  // namespace
}  // namespace wrapgauge
