// A cuff round a limb as a plane problem: inextensible band, inner sheet of smaller natural radius, tissue as
// a foundation, no friction. Closed-form balance of Laplace tension and foundation; the figures are our own
// solution of k u = p + T(lambda)/r, T = mu t (lambda - lambda^-3), r = R - u.
#include "tests/published/device_fixture.hpp"

namespace wrapgauge::published {
namespace {

const Source kRing{"Ring cuff on a limb",
                   "plane balance of Laplace tension and foundation",
                   "derived",
                   {},
                   "ring_cuff_test.cpp"};
constexpr double kRadius = 0.045, kBandRadius = 0.0465, kWidth = 0.120, kRim = 0.006, kSeam = 0.003,
                 kShear = 30e3;

// `rim_radius`: where rims and closing seam are held, on the plane solution's inner radius, so that the
// finite width has no end effect on the inner sheet's axial stretch.
InflationSetup ring_setup(double natural_radius_share, double foundation_kpa_per_mm, double rim_radius,
                          Length edge = 5.0 * mm) {
  InflationSetup setup;
  Layout& layout = setup.layout;
  const double length = 2.0 * M_PI * kBandRadius;
  layout.outline_m = rectangle(0.0, -0.5 * kWidth, length, 0.5 * kWidth);
  // All round but for a thin seam, which the closure needs.
  layout.chambers.push_back(
      {"all round", rectangle(kSeam, -0.5 * kWidth + kRim, length - kSeam, 0.5 * kWidth - kRim), {}, {}});
  layout.inlets.push_back({"inlet", {0.5 * length, 0.0}});
  layout.skin_sheet = {"soft", 1.5 * mm, kBandRadius / (natural_radius_share * kRadius)};
  // The band: a thin soft sheet under cloth that does not stretch.
  layout.outer_sheet = {"soft", 0.5 * mm};
  layout.backing = {200.0 * N_per_mm, 200.0 * N_per_mm};
  layout.closure = Closure{0.0, Length(length), std::nullopt};
  FlatMeshOptions options;
  options.edge = options.seam_edge = edge;
  setup.flat = triangulate_layout(layout, Length(length), options).value();
  setup.skin_law = NeoHookean{Pressure(kShear)};
  setup.outer_law = NeoHookean{3.0 * kPa};
  const Eigen::Index count = setup.flat.vertices_m.rows();
  setup.start_m.resize(count, 3);
  setup.start_outward.resize(count, 3);
  for (Eigen::Index v = 0; v < count; ++v) {
    const double angle = setup.flat.vertices_m(v, 0) / kBandRadius;
    setup.start_outward.row(v) << std::cos(angle), std::sin(angle), 0.0;
    const double y = setup.flat.vertices_m(v, 1);
    const bool at_rim = std::abs(y) > 0.5 * kWidth - kRim - 1e-6 ||
                        std::abs(setup.flat.vertices_m(v, 0) - 0.5 * length) > 0.5 * length - kSeam - 1e-6;
    const double radius = at_rim ? rim_radius : kBandRadius;
    setup.start_m.row(v) << radius * std::cos(angle), radius * std::sin(angle), y;
    if (at_rim) setup.held.push_back(static_cast<int>(v));
  }
  setup.body = std::make_shared<RoundLimb>(kRadius);
  setup.foundation_pa_per_m = Eigen::VectorXd::Constant(count, foundation_kpa_per_mm * 1e6);
  return setup;
}

double middle_pressure(const InflationSetup& setup, const EquilibriumState& state) {
  double force = 0.0, area = 0.0;
  const double length = 2.0 * M_PI * kBandRadius;
  for (Eigen::Index v = 0; v < state.contact_pressure_pa.size(); ++v) {
    const double x = setup.flat.vertices_m(v, 0), y = setup.flat.vertices_m(v, 1);
    if (std::abs(y) > 0.25 * kWidth || std::abs(x - 0.5 * length) > 0.3 * length) continue;
    force += state.contact_pressure_pa(v) * state.contact_area_m2(v);
    area += state.contact_area_m2(v);
  }
  return force / area;
}

struct RingRow {
  double natural_share, foundation, pressure_kpa;
};
// k u = p + T(r / Rn) / r with r = R - u, by bisection, kPa and mm.
double balanced_pressure_kpa(double natural_radius_share, double foundation_kpa_per_mm, double pressure_kpa) {
  constexpr double kRadiusMm = 45.0, kTension = 30.0 * 1.5;  // mu t
  double low = 0.0, high = 20.0;
  for (int k = 0; k < 80; ++k) {
    const double depth = 0.5 * (low + high), radius = kRadiusMm - depth,
                 stretch = radius / (natural_radius_share * kRadiusMm);
    const double tension = kTension * (stretch - std::pow(stretch, -3));
    (foundation_kpa_per_mm * depth < pressure_kpa + tension / radius ? low : high) = depth;
  }
  return foundation_kpa_per_mm * low;
}

class UniformRing : public testing::TestWithParam<RingRow> {};

TEST_P(UniformRing, PressesAsLaplaceAndFoundationBalance) {
  const RingRow row = GetParam();
  expect_derived(row.pressure_kpa, balanced_pressure_kpa(row.natural_share, row.foundation, 4.0));
  const InflationSetup setup =
      ring_setup(row.natural_share, row.foundation, kRadius - 1e-3 * row.pressure_kpa / row.foundation);
  InflationOptions options;
  options.bending = false;
  options.closed_state = false;
  options.contact_offset = false;
  options.steps = 2;
  const auto path = inflate(setup, {4.0 * kPa}, options);
  ASSERT_TRUE(path) << path.problem().message;
  const EquilibriumState& state = path->states.back();
  expect_within(
      kRing, "ring k " + number_text(row.foundation) + " kPa/mm, Rn " + number_text(row.natural_share) + " R",
      middle_pressure(setup, state) / 1000.0, row.pressure_kpa, 0.01);
}

INSTANTIATE_TEST_SUITE_P(Rows, UniformRing,
                         testing::Values(RingRow{.8, 1, 4.47180}, RingRow{.9, 1, 4.04823},
                                         RingRow{.8, 3, 4.66074}, RingRow{.9, 3, 4.28180},
                                         RingRow{.8, 10, 4.71596}, RingRow{.9, 10, 4.35321}));

}  // namespace
}  // namespace wrapgauge::published
