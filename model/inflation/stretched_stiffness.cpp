#include "model/inflation/stretched_stiffness.hpp"

#include <algorithm>

#include "model/material/stretch_pull.hpp"

namespace wrapgauge {
namespace {

constexpr double kCrushed = 0.6;  // of its rest area

// The table, from kCrushed on; beyond it, where few sheets ever get, the law is asked.
constexpr double kPiece = 0.02;
constexpr int kPieces = 270;

// One place of the law with two derivatives.
Jet<1> at_ratio(const HyperelasticLaw& law, double ratio) {
  const Jet<1> area = Jet<1>::variable(ratio, 0), stretch = sqrt(area);
  const Jet<1> modulus = bending_modulus(law, stretch_pull(law, stretch, stretch), stretch);
  return modulus / (area * area * area) * (1.0 / (4.0 * initial_shear_modulus(law).si()));
}

// On from the edge of what is known: a parabola.
Jet<1> went_on(const Jet<1>& known, double beyond, const Jet<1>& area_ratio) {
  const double slope = known.gradient(0), curvature = known.hessian(0, 0);
  return area_ratio.mapped(known.value + beyond * (slope + 0.5 * beyond * curvature),
                           slope + beyond * curvature, curvature);
}

// The fifth-degree piece between two places, from value, slope and curvature at both.
std::array<double, 6> piece_between(const Jet<1>& low, const Jet<1>& high) {
  const double d0 = kPiece * low.gradient(0), d1 = kPiece * high.gradient(0);
  const double c0 = kPiece * kPiece * low.hessian(0, 0), c1 = kPiece * kPiece * high.hessian(0, 0);
  const double rise = high.value - low.value - d0 - 0.5 * c0, turn = d1 - d0 - c0, bend = c1 - c0;
  return {low.value,
          d0,
          0.5 * c0,
          10.0 * rise - 4.0 * turn + 0.5 * bend,
          -15.0 * rise + 7.0 * turn - bend,
          6.0 * rise - 3.0 * turn + 0.5 * bend};
}

}  // namespace

Jet<1> stretched_stiffness(const HyperelasticLaw& law, const Jet<1>& area_ratio) {
  const double known = std::max(area_ratio.value, kCrushed);
  return went_on(at_ratio(law, known), area_ratio.value - known, area_ratio);
}

StretchedStiffness::StretchedStiffness(const HyperelasticLaw& law) : law_(&law) {
  Jet<1> low = at_ratio(law, kCrushed);
  for (int i = 0; i < kPieces; ++i) {
    const Jet<1> high = at_ratio(law, kCrushed + kPiece * (i + 1));
    pieces_.push_back(piece_between(low, high));
    low = high;
  }
}

Jet<1> StretchedStiffness::at(const Jet<1>& area_ratio) const {
  const double known = std::max(area_ratio.value, kCrushed), along = (known - kCrushed) / kPiece;
  if (!(along < kPieces)) return stretched_stiffness(*law_, area_ratio);
  const auto piece = static_cast<std::size_t>(along);
  const double t = along - static_cast<double>(piece);
  const auto& [a, b, c, d, e, f] = pieces_[piece];
  Jet<1> at(a + t * (b + t * (c + t * (d + t * (e + t * f)))));
  at.gradient(0) = (b + t * (2.0 * c + t * (3.0 * d + t * (4.0 * e + t * 5.0 * f)))) / kPiece;
  at.hessian(0, 0) = (2.0 * c + t * (6.0 * d + t * (12.0 * e + t * 20.0 * f))) / (kPiece * kPiece);
  return went_on(at, area_ratio.value - known, area_ratio);
}

}  // namespace wrapgauge
