// A cuff round a limb whose inner sheet is as long as the band it is fused to: closed round the smaller limb,
// the inner sheet is compressed along the girth. Carrying compression it takes pressure off the skin (k u = p
// + T/r with T < 0); wrinkled it carries nothing and the skin meets the inflation pressure. Plane balance as
// in ring_cuff_test.cpp; the figures are solved here from that one equation (derived).
#include "tests/published/device_fixture.hpp"

namespace wrapgauge::published {
namespace {

const Source kSlack{"Slack ring, compressed and wrinkled",
                    "plane balance of Laplace tension and foundation",
                    "derived",
                    {},
                    "wrinkled_ring_test.cpp"};

constexpr double kRadius = 0.045, kBandRadius = 0.0465, kWidth = 0.100, kRim = 0.006, kSeam = 0.003,
                 kShear = 30e3, kThickness = 0.0015, kPressure = 4000.0;

struct PlaneRing {
  double radius_m, contact_pa;
};

PlaneRing plane_ring(double foundation_pa_per_m, bool wrinkled) {
  double low = 0.5 * kRadius, high = kRadius;
  for (int k = 0; k < 80; ++k) {
    const double r = 0.5 * (low + high), stretch = r / kBandRadius;
    const double tension = wrinkled ? 0.0 : kShear * kThickness * (stretch - std::pow(stretch, -3));
    (foundation_pa_per_m * (kRadius - r) > kPressure + tension / r ? low : high) = r;
  }
  return {low, foundation_pa_per_m * (kRadius - low)};
}

InflationSetup slack_ring(double foundation_pa_per_m, double rim_radius_m) {
  InflationSetup setup;
  Layout& layout = setup.layout;
  const double length = 2.0 * M_PI * kBandRadius;
  layout.outline_m = rectangle(0.0, -0.5 * kWidth, length, 0.5 * kWidth);
  layout.chambers.push_back(
      {"all round", rectangle(kSeam, -0.5 * kWidth + kRim, length - kSeam, 0.5 * kWidth - kRim), {}, {}});
  layout.inlets.push_back({"inlet", {0.5 * length, 0.0}});
  layout.skin_sheet = {"soft", Length(kThickness)};
  layout.outer_sheet = {"soft", 0.5 * mm};
  layout.backing = {200.0 * N_per_mm, 200.0 * N_per_mm};
  layout.closure = Closure{0.0, Length(length), std::nullopt};
  FlatMeshOptions options;
  options.edge = options.seam_edge = 5.0 * mm;
  setup.flat = triangulate_layout(layout, Length(length), options).value();
  setup.skin_law = NeoHookean{Pressure(kShear)};
  setup.outer_law = NeoHookean{3.0 * kPa};
  const Eigen::Index count = setup.flat.vertices_m.rows();
  setup.start_m.resize(count, 3);
  setup.start_outward.resize(count, 3);
  for (Eigen::Index v = 0; v < count; ++v) {
    const double x = setup.flat.vertices_m(v, 0), y = setup.flat.vertices_m(v, 1), angle = x / kBandRadius;
    const bool at_rim =
        std::abs(y) > 0.5 * kWidth - kRim - 1e-6 || std::abs(x - 0.5 * length) > 0.5 * length - kSeam - 1e-6;
    const double radius = at_rim ? rim_radius_m : kBandRadius;
    setup.start_outward.row(v) << std::cos(angle), std::sin(angle), 0.0;
    setup.start_m.row(v) << radius * std::cos(angle), radius * std::sin(angle), y;
    if (at_rim) setup.held.push_back(static_cast<int>(v));
  }
  setup.body = std::make_shared<RoundLimb>(kRadius);
  setup.foundation_pa_per_m = Eigen::VectorXd::Constant(count, foundation_pa_per_m);
  return setup;
}

double middle_pressure(const InflationSetup& setup, const EquilibriumState& state) {
  const double length = 2.0 * M_PI * kBandRadius;
  double force = 0.0, area = 0.0;
  for (Eigen::Index v = 0; v < state.contact_pressure_pa.size(); ++v) {
    if (std::abs(setup.flat.vertices_m(v, 1)) > 0.25 * kWidth ||
        std::abs(setup.flat.vertices_m(v, 0) - 0.5 * length) > 0.3 * length)
      continue;
    force += state.contact_pressure_pa(v) * state.contact_area_m2(v);
    area += state.contact_area_m2(v);
  }
  return force / area;
}

class SlackRing : public testing::TestWithParam<double> {};

TEST_P(SlackRing, CompressedAndWrinkledPressAsThePlaneBalanceSays) {
  const double foundation = GetParam() * 1e6;
  double found[2] = {};
  for (const bool wrinkled : {false, true}) {
    const PlaneRing plane = plane_ring(foundation, wrinkled);
    const InflationSetup setup = slack_ring(foundation, plane.radius_m);
    InflationOptions options;
    options.relaxed_compression = wrinkled;
    options.contact_offset = false;
    options.closed_state = false;
    options.steps = 2;
    const auto path = inflate(setup, {Pressure(kPressure)}, options);
    ASSERT_TRUE(path) << path.problem().message;
    found[wrinkled] = middle_pressure(setup, path->states.back());
    expect_within(kSlack,
                  std::string("slack ring ") + (wrinkled ? "wrinkled" : "compressed") + ", k " +
                      number_text(GetParam()) + " kPa/mm",
                  1e-3 * found[wrinkled], 1e-3 * plane.contact_pa, 0.01);
  }
  EXPECT_GT(found[1] / found[0], 1.01);
  EXPECT_LT(found[1] / found[0], 1.10);
}

INSTANTIATE_TEST_SUITE_P(Foundations, SlackRing, testing::Values(3.0, 10.0));

}  // namespace
}  // namespace wrapgauge::published
