#include "model/material/hyperelastic.hpp"

#include <cassert>
#include <cmath>
#include <utility>

#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

template <class... Cases>
struct Overloaded : Cases... {
  using Cases::operator()...;
};
template <class... Cases>
Overloaded(Cases...) -> Overloaded<Cases...>;

// An invariant less 3, with its derivatives with respect to (l1, l2).
struct Invariant {
  double value, d1, d2, d11, d12, d22;
};

Invariant first_invariant(double l1, double l2) {
  const double inverse1 = 1.0 / l1, inverse2 = 1.0 / l2;
  const double l3_squared = inverse1 * inverse1 * inverse2 * inverse2;
  return {l1 * l1 + l2 * l2 + l3_squared - 3.0,   2.0 * (l1 - l3_squared * inverse1),
          2.0 * (l2 - l3_squared * inverse2),     2.0 + 6.0 * l3_squared * inverse1 * inverse1,
          4.0 * l3_squared * inverse1 * inverse2, 2.0 + 6.0 * l3_squared * inverse2 * inverse2};
}

Invariant second_invariant(double l1, double l2) {
  const double squared1 = l1 * l1, squared2 = l2 * l2;
  const double inverse1 = 1.0 / squared1, inverse2 = 1.0 / squared2;
  return {inverse1 + inverse2 + squared1 * squared2 - 3.0,
          2.0 * (l1 * squared2 - inverse1 / l1),
          2.0 * (l2 * squared1 - inverse2 / l2),
          2.0 * squared2 + 6.0 * inverse1 * inverse1,
          4.0 * l1 * l2,
          2.0 * squared1 + 6.0 * inverse2 * inverse2};
}

// Energy f(I) from its value and first two derivatives at I, by the chain rule.
StretchEnergy of_invariant(const Invariant& i, double f, double slope, double curvature) {
  return {f,
          slope * i.d1,
          slope * i.d2,
          slope * i.d11 + curvature * i.d1 * i.d1,
          slope * i.d12 + curvature * i.d1 * i.d2,
          slope * i.d22 + curvature * i.d2 * i.d2};
}

StretchEnergy energy(const NeoHookean& law, double l1, double l2) {
  const Invariant i1 = first_invariant(l1, l2);
  const double half_mu = 0.5 * law.mu.si();
  return of_invariant(i1, half_mu * i1.value, half_mu, 0.0);
}

StretchEnergy energy(const MooneyRivlin& law, double l1, double l2) {
  const Invariant i1 = first_invariant(l1, l2), i2 = second_invariant(l1, l2);
  const double c1 = law.c1.si(), c2 = law.c2.si();
  return {c1 * i1.value + c2 * i2.value, c1 * i1.d1 + c2 * i2.d1,   c1 * i1.d2 + c2 * i2.d2,
          c1 * i1.d11 + c2 * i2.d11,     c1 * i1.d12 + c2 * i2.d12, c1 * i1.d22 + c2 * i2.d22};
}

StretchEnergy energy(const Yeoh& law, double l1, double l2) {
  const Invariant i1 = first_invariant(l1, l2);
  const double c1 = law.c1.si(), c2 = law.c2.si(), c3 = law.c3.si(), x = i1.value;
  return of_invariant(i1, x * (c1 + x * (c2 + x * c3)), c1 + x * (2.0 * c2 + x * 3.0 * c3),
                      2.0 * c2 + 6.0 * c3 * x);
}

StretchEnergy energy(const Ogden& law, double l1, double l2) {
  const double log1 = std::log(l1), log2 = std::log(l2);
  const double inverse1 = 1.0 / l1, inverse2 = 1.0 / l2;
  StretchEnergy sum;
  for (const OgdenTerm& term : law.terms) {
    const double mu = term.mu.si(), a = term.alpha;
    const double power1 = std::exp(a * log1), power2 = std::exp(a * log2);
    const double power3 = std::exp(-a * (log1 + log2));
    sum.w += mu / a * (power1 + power2 + power3 - 3.0);
    sum.w1 += mu * (power1 - power3) * inverse1;
    sum.w2 += mu * (power2 - power3) * inverse2;
    sum.w11 += mu * ((a - 1.0) * power1 + (a + 1.0) * power3) * inverse1 * inverse1;
    sum.w12 += mu * a * power3 * inverse1 * inverse2;
    sum.w22 += mu * ((a - 1.0) * power2 + (a + 1.0) * power3) * inverse2 * inverse2;
  }
  return sum;
}

// Every coefficient of the law; Ogden exponents apart, because they carry no unit.
std::vector<double> moduli_pa(const HyperelasticLaw& law) {
  return std::visit(Overloaded{[](const NeoHookean& l) { return std::vector{l.mu.si()}; },
                               [](const MooneyRivlin& l) {
                                 return std::vector{l.c1.si(), l.c2.si()};
                               },
                               [](const Yeoh& l) {
                                 return std::vector{l.c1.si(), l.c2.si(), l.c3.si()};
                               },
                               [](const Ogden& l) {
                                 std::vector<double> moduli;
                                 for (const OgdenTerm& term : l.terms) moduli.push_back(term.mu.si());
                                 return moduli;
                               }},
                    law);
}

}  // namespace

StretchEnergy stretch_energy(const HyperelasticLaw& law, double l1, double l2) {
  assert(l1 > 0.0 && l2 > 0.0);
  return std::visit([&](const auto& l) { return energy(l, l1, l2); }, law);
}

Pressure initial_shear_modulus(const HyperelasticLaw& law) {
  return std::visit(Overloaded{[](const NeoHookean& l) { return l.mu; },
                               [](const MooneyRivlin& l) { return 2.0 * (l.c1 + l.c2); },
                               [](const Yeoh& l) { return 2.0 * l.c1; },
                               [](const Ogden& l) {
                                 Pressure mu;
                                 for (const OgdenTerm& term : l.terms) mu = mu + 0.5 * term.alpha * term.mu;
                                 return mu;
                               }},
                    law);
}

std::string_view law_name(const HyperelasticLaw& law) {
  return std::visit(Overloaded{[](const NeoHookean&) { return std::string_view("neo-Hookean"); },
                               [](const MooneyRivlin&) { return std::string_view("Mooney-Rivlin"); },
                               [](const Yeoh&) { return std::string_view("Yeoh"); },
                               [](const Ogden&) { return std::string_view("Ogden"); }},
                    law);
}

HyperelasticLaw scaled(const HyperelasticLaw& law, double factor) {
  return std::visit(
      Overloaded{[&](const NeoHookean& l) -> HyperelasticLaw { return NeoHookean{l.mu * factor}; },
                 [&](const MooneyRivlin& l) -> HyperelasticLaw {
                   return MooneyRivlin{l.c1 * factor, l.c2 * factor};
                 },
                 [&](const Yeoh& l) -> HyperelasticLaw {
                   return Yeoh{l.c1 * factor, l.c2 * factor, l.c3 * factor};
                 },
                 [&](Ogden l) -> HyperelasticLaw {
                   for (OgdenTerm& term : l.terms) term.mu = term.mu * factor;
                   return l;
                 }},
      law);
}

Result<HyperelasticLaw> checked(HyperelasticLaw law) {
  const Phrase name = name_of(std::string(law_name(law)));
  for (double modulus : moduli_pa(law)) {
    if (!std::isfinite(modulus)) {
      return bad_input(
          Phrase::worded("A coefficient of the %1 law is not a finite number; give it in kPa.", {name}));
    }
  }
  if (const Ogden* ogden = std::get_if<Ogden>(&law)) {
    if (ogden->terms.empty())
      return bad_input(Phrase::worded("The Ogden law has no terms; give at least one (mu, alpha)."));
    for (const OgdenTerm& term : ogden->terms) {
      if (std::isfinite(term.alpha) && term.alpha != 0.0) continue;
      return bad_input(
          Phrase::worded("An exponent alpha of the Ogden law is zero or not finite; give another number."));
    }
  }
  const Pressure mu = initial_shear_modulus(law);
  if (!(mu.si() > 0.0) || !std::isfinite(mu.si())) {
    return bad_input(
        Phrase::worded("The %1 law has an initial shear modulus of %2 kPa; it must be above zero, so check "
                       "its coefficients.",
                       {name, figures_of(number_text(mu / kPa))}));
  }
  return law;
}

}  // namespace wrapgauge
