#pragma once
// A square pad of two sheets, clamped all round: each sheet bulges for itself.

#include "tests/published/device_fixture.hpp"

namespace wrapgauge::published {

// 60 x 60 mm, sheets of 30 kPa shear modulus.
inline InflationSetup square_setup(Length edge = 1.5 * mm, Length thickness = 1.5 * mm) {
  constexpr double kHalf = 0.030, kOutline = 0.0345;
  InflationSetup setup;
  setup.layout.outline_m = rectangle(-kOutline, -kOutline, kOutline, kOutline);
  setup.layout.chambers.push_back({"pad", rectangle(-kHalf, -kHalf, kHalf, kHalf), {}, {}});
  setup.layout.inlets.push_back({"inlet", Vec2::Zero()});
  setup.layout.skin_sheet = setup.layout.outer_sheet = {"soft", thickness};
  FlatMeshOptions mesh;
  mesh.edge = edge;
  mesh.seam_edge = edge;
  mesh.seam_band = 3.0 * mm;
  setup.flat = triangulate_layout(setup.layout, std::nullopt, mesh).value();
  setup.skin_law = setup.outer_law = NeoHookean{30.0 * kPa};
  lay_flat_and_clamp(setup);
  return setup;
}

}  // namespace wrapgauge::published
