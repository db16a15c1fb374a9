#pragma once
// Incompressible hyperelastic laws in plane stress: energy a unit of rest volume as a function of the two
// in-plane principal stretches, the third being 1/(l1 l2).
//
//   neo-Hookean    W = mu/2 (I1-3)
//   Mooney-Rivlin  W = C1 (I1-3) + C2 (I2-3),              mu = 2 (C1+C2)
//   Yeoh           W = C1 (I1-3) + C2 (I1-3)^2 + C3 (I1-3)^3, mu = 2 C1
//   Ogden          W = sum mu_k/a_k (l1^a_k + l2^a_k + l3^a_k - 3), mu = sum mu_k a_k / 2

#include <string_view>
#include <variant>
#include <vector>

#include "model/core/quantity.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

struct NeoHookean {
  Pressure mu;
};
struct MooneyRivlin {
  Pressure c1, c2;
};
struct Yeoh {
  Pressure c1, c2, c3;
};
struct OgdenTerm {
  Pressure mu;
  double alpha;
};
struct Ogden {
  std::vector<OgdenTerm> terms;
};
using HyperelasticLaw = std::variant<NeoHookean, MooneyRivlin, Yeoh, Ogden>;

// W and its derivatives with respect to (l1, l2); Pa.
struct StretchEnergy {
  double w = 0.0;
  double w1 = 0.0, w2 = 0.0;
  double w11 = 0.0, w12 = 0.0, w22 = 0.0;
};

// Requires l1 > 0 and l2 > 0. Hot: called once a triangle an iteration.
StretchEnergy stretch_energy(const HyperelasticLaw& law, double l1, double l2);

Pressure initial_shear_modulus(const HyperelasticLaw& law);
std::string_view law_name(const HyperelasticLaw& law);
HyperelasticLaw scaled(const HyperelasticLaw& law, double factor);  // every modulus times factor

// Problem when the law has no positive initial shear modulus or a coefficient is not finite.
Result<HyperelasticLaw> checked(HyperelasticLaw law);

}  // namespace wrapgauge
