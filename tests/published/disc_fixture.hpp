#pragma once
// A clamped disc: the skin sheet of one round chamber, bulging to -z. The other sheet is so stiff that it
// stays flat, so the chamber behaves as one disc also past its limit pressure.

#include "tests/published/device_fixture.hpp"

namespace wrapgauge::published {

constexpr double kDiscRadius = 0.030, kDiscThickness = 0.0015, kDiscShear = 30e3;
constexpr double kStiffShear = 1e10;

inline InflationSetup disc_setup(const HyperelasticLaw& law, const FlatMeshOptions& mesh, int sides = 96) {
  InflationSetup setup;
  Layout& layout = setup.layout;
  layout.name = "disc";
  layout.outline_m = circle(1.15 * kDiscRadius, sides);
  layout.chambers.push_back({"disc", circle(kDiscRadius, sides), {}, {}});
  layout.inlets.push_back({"inlet", Vec2::Zero()});
  layout.skin_sheet = {"free", Length(kDiscThickness)};
  layout.outer_sheet = {"stiff", Length(kDiscThickness)};
  setup.flat = triangulate_layout(layout, std::nullopt, mesh).value();
  setup.skin_law = law;
  setup.outer_law = NeoHookean{Pressure(kStiffShear)};
  lay_flat_and_clamp(setup);
  return setup;
}

inline InflationSetup disc_setup(const HyperelasticLaw& law, double edge_m) {
  return disc_setup(law, {.edge = Length(edge_m), .seam_edge = Length(edge_m)});
}

// The load P = p a / (mu t).
inline Pressure disc_load(double p, double shear_pa = kDiscShear) {
  return Pressure(p * shear_pa * kDiscThickness / kDiscRadius);
}

}  // namespace wrapgauge::published
