#pragma once
// Devices of a few dozen nodes, for derivative and property tests.

#include <cmath>

#include "model/inflation/load_path.hpp"
#include "tests/inflation/round_limb.hpp"

namespace wrapgauge::small {

inline void lay_round(InflationSetup& setup, double radius_m, double length_m) {
  const Eigen::Index count = setup.flat.vertices_m.rows();
  setup.start_m.resize(count, 3);
  setup.start_outward.resize(count, 3);
  for (Eigen::Index v = 0; v < count; ++v) {
    const double angle = 2.0 * M_PI * setup.flat.vertices_m(v, 0) / length_m;
    setup.start_outward.row(v) << std::cos(angle), std::sin(angle), 0.0;
    setup.start_m.row(v) << radius_m * std::cos(angle), radius_m * std::sin(angle),
        setup.flat.vertices_m(v, 1);
  }
}

// In z = 0, the outer sheet on the +z side.
inline void lay_flat(InflationSetup& setup) {
  const Eigen::Index count = setup.flat.vertices_m.rows();
  setup.start_m = setup.start_outward = Points3::Zero(count, 3);
  setup.start_m.leftCols(2) = setup.flat.vertices_m;
  setup.start_outward.col(2).setOnes();
}

// One chamber on a closed band with backing round a limb of radius 30 mm.
inline InflationSetup closed_cuff(double friction, double edge_m = 0.014) {
  InflationSetup setup;
  const double length = 0.190;  // a light fit: 2 pi (30 + 0.75) mm is 193 mm
  setup.layout.outline_m = rectangle(0.0, 0.0, length, 0.06);
  setup.layout.chambers.push_back({"one", rectangle(0.05, 0.012, 0.13, 0.048), {}, {}});
  setup.layout.inlets.push_back({"inlet", {0.09, 0.03}});
  setup.layout.skin_sheet = {"soft", 1.5 * mm};
  setup.layout.outer_sheet = {"soft", 2.5 * mm};
  setup.layout.backing = {10.0 * N_per_mm, 5.0 * N_per_mm};
  setup.layout.closure = Closure{0.0, Length(length), std::nullopt};
  FlatMeshOptions options;
  options.edge = options.seam_edge = Length(edge_m);
  setup.flat = triangulate_layout(setup.layout, Length(length), options).value();
  setup.skin_law = NeoHookean{15.0 * kPa};
  setup.outer_law = Yeoh{25.0 * kPa, 1.8 * kPa, 0.0 * kPa};
  lay_round(setup, 0.030, length);
  setup.body = std::make_shared<RoundLimb>(0.030);
  setup.foundation_pa_per_m = Eigen::VectorXd::Constant(setup.flat.vertices_m.rows(), 1.25e6);
  setup.friction = friction;
  return setup;
}

// A fused sheet without a body, for plate checks.
inline InflationSetup plain_sheet(double width_m, double height_m, double thickness_m) {
  InflationSetup setup;
  setup.layout.outline_m = rectangle(0.0, 0.0, width_m, height_m);
  setup.layout.skin_sheet = setup.layout.outer_sheet = {"soft", Length(0.5 * thickness_m)};
  FlatMeshOptions options;
  options.edge = options.seam_edge = 3.0 * mm;
  setup.flat = triangulate_layout(setup.layout, std::nullopt, options).value();
  setup.skin_law = setup.outer_law = NeoHookean{30.0 * kPa};
  lay_flat(setup);
  return setup;
}

}  // namespace wrapgauge::small
