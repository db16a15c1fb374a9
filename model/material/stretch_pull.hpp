#pragma once
// The nominal stress along one in-plane stretch and its slope, for any kind of number: with a Jet they come
// with two derivatives more than stretch_energy() gives. Requires both stretches above zero.

#include "model/material/hyperelastic.hpp"

namespace wrapgauge {

template <class Number>
struct StretchPull {
  Number w1 = 0.0, w11 = 0.0;  // dW/dl1, d2W/dl1^2 at fixed l2; Pa
};

template <class Number>
StretchPull<Number> stretch_pull(const Yeoh& law, const Number& l1, const Number& l2) {
  const double c1 = law.c1.si(), c2 = law.c2.si(), c3 = law.c3.si();
  const Number squared = l1 * l1, l3_squared = 1.0 / (squared * l2 * l2);
  const Number x = squared + l2 * l2 + l3_squared - 3.0;
  const Number x1 = 2.0 * (l1 - l3_squared / l1), x11 = 2.0 + 6.0 * l3_squared / squared;
  const Number slope = c1 + x * (2.0 * c2 + 3.0 * c3 * x), curvature = 2.0 * c2 + 6.0 * c3 * x;
  return {slope * x1, slope * x11 + curvature * x1 * x1};
}

template <class Number>
StretchPull<Number> stretch_pull(const Ogden& law, const Number& l1, const Number& l2) {
  using std::pow;
  StretchPull<Number> sum;
  for (const OgdenTerm& term : law.terms) {
    const double mu = term.mu.si(), a = term.alpha;
    const Number power1 = pow(l1, a), power3 = pow(l1 * l2, -a);
    sum.w1 = sum.w1 + mu * (power1 - power3) / l1;
    sum.w11 = sum.w11 + mu * ((a - 1.0) * power1 + (a + 1.0) * power3) / (l1 * l1);
  }
  return sum;
}

template <class Number>
StretchPull<Number> stretch_pull(const NeoHookean& law, const Number& l1, const Number& l2) {
  return stretch_pull(Yeoh{0.5 * law.mu, {}, {}}, l1, l2);
}

template <class Number>
StretchPull<Number> stretch_pull(const MooneyRivlin& law, const Number& l1, const Number& l2) {
  const StretchPull<Number> of_first = stretch_pull(Yeoh{law.c1, {}, {}}, l1, l2);
  const double c2 = law.c2.si();
  const Number cubed = l1 * l1 * l1, other_squared = l2 * l2;
  return {of_first.w1 + 2.0 * c2 * (l1 * other_squared - 1.0 / cubed),
          of_first.w11 + 2.0 * c2 * (other_squared + 3.0 / (cubed * l1))};
}

template <class Number>
StretchPull<Number> stretch_pull(const HyperelasticLaw& law, const Number& l1, const Number& l2) {
  return std::visit([&](const auto& l) { return stretch_pull(l, l1, l2); }, law);
}

// A law may soften so much when stretched that bending would give energy back; it keeps this share of the
// stiffness it began with.
inline constexpr double kLeastBendingShare = 0.02;

// l^2 W11 - l W1 across the bend, kept above zero; Pa.
template <class Number>
Number bending_modulus(const HyperelasticLaw& law, const StretchPull<Number>& pull, const Number& across) {
  using std::sqrt;
  const Number modulus = across * across * pull.w11 - across * pull.w1;
  const double least = kLeastBendingShare * 4.0 * initial_shear_modulus(law).si();
  return 0.5 * (modulus + sqrt(modulus * modulus + least * least));
}

}  // namespace wrapgauge
