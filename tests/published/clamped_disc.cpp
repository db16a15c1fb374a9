// Clamped disc under pressure. The problem is the classic one of Adkins and Rivlin 1952 ("Large elastic
// deformations of isotropic materials IX", Phil. Trans. R. Soc. A 244); the reference figures are our own
// integration of its ordinary differential equations to 1e-6, for membranes without bending.
#include "tests/published/device_fixture.hpp"

namespace wrapgauge::published {
namespace {

constexpr double kRadius = 0.030, kThickness = 0.0015, kShear = 30e3;

// One disc: the other sheet is so stiff that it stays flat. The free disc is the skin sheet, bulging to -z.
InflationSetup disc_setup(HyperelasticLaw law, double edge_m) {
  InflationSetup setup;
  Layout& layout = setup.layout;
  layout.name = "disc";
  layout.outline_m = circle(1.2 * kRadius, 96);
  layout.chambers.push_back({"disc", circle(kRadius, 96), {}, {}});
  layout.inlets.push_back({"inlet", Vec2::Zero()});
  layout.skin_sheet = {"free", Length(kThickness)};
  layout.outer_sheet = {"stiff", Length(kThickness)};
  FlatMeshOptions options;
  options.edge = options.seam_edge = Length(edge_m);
  setup.flat = triangulate_layout(layout, std::nullopt, options).value();
  setup.skin_law = law;
  setup.outer_law = NeoHookean{1e6 * kPa};
  const Eigen::Index count = setup.flat.vertices_m.rows();
  setup.start_m = Points3::Zero(count, 3);
  setup.start_m.leftCols(2) = setup.flat.vertices_m;
  setup.start_outward = Points3::Zero(count, 3);
  setup.start_outward.col(2).setOnes();
  const SheetMesh sheet = make_sheet_mesh(setup.flat);
  for (int v = 0; v < count; ++v)
    if (sheet.skin_node[v] == sheet.outer_node[v]) setup.held.push_back(v);
  return setup;
}

InflationOptions membrane_only(int steps) {
  InflationOptions options;
  options.bending = false;
  options.steps = steps;
  options.contact_offset = false;
  options.residual_tolerance = 1e-4;
  return options;
}

double height(const LoadPath& path, const EquilibriumState& state) {
  double lowest = 0.0;
  for (int node : path.sheet.skin_node) lowest = std::min(lowest, state.positions_m(node, 2));
  return -lowest;
}

// Between the skin sheet and its flat start (the stiff sheet on the other side rises a little too, and does
// not count).
double volume(const LoadPath& path, const EquilibriumState& state) {
  double sum = 0.0;
  for (int t : path.sheet.cavities[0].skin_triangles) {
    const auto nodes = path.sheet.triangles.row(t);
    const Vec3 a = state.positions_m.row(nodes(0)), b = state.positions_m.row(nodes(1)),
               c = state.positions_m.row(nodes(2));
    sum -= (a.z() + b.z() + c.z()) / 6.0 *
           ((b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x()));
  }
  return sum;
}

Pressure at_load(double p) {
  return Pressure(p * kShear * kThickness / kRadius);
}

struct Row {
  double p, height, volume;
};

void check_free_rows(const HyperelasticLaw& law, const std::vector<Row>& rows, const char* name) {
  const InflationSetup setup = disc_setup(law, 0.002);
  for (const Row& row : rows) {
    const auto path = inflate(setup, {at_load(row.p)}, membrane_only(2));
    ASSERT_TRUE(path) << path.problem().message;
    ASSERT_FALSE(path->limit_point);
    const EquilibriumState& state = path->states.back();
    const std::string label = std::string(name) + " P " + std::to_string(row.p);
    expect_within(label + " height/a", height(*path, state) / kRadius, row.height, 0.01);
    expect_within(label + " volume/a3", volume(*path, state) / std::pow(kRadius, 3), row.volume, 0.015);
  }
}

TEST(ClampedDisc, NeoHookeanRisesAsTheReference) {
  check_free_rows(NeoHookean{Pressure(kShear)},
                  {{0.05, .15573, .25502},
                   {0.2, .25761, .42860},
                   {0.5, .37430, .63980},
                   {1.0, .53121, .95366},
                   {1.5, .71906, 1.38813}},
                  "neo-Hookean");
}

TEST(ClampedDisc, NeoHookeanLimitPointIsNamed) {
  const InflationSetup setup = disc_setup(NeoHookean{Pressure(kShear)}, 0.0025);
  const auto path = inflate(setup, {at_load(2.2)}, membrane_only(4));
  ASSERT_TRUE(path) << path.problem().message;
  ASSERT_TRUE(path->limit_point);
  expect_within("limit pressure P", path->limit_point->pressure / at_load(1.0), 1.87917, 0.01);
}

struct PlateRow {
  double distance, p, contact_radius, force, volume;
};

TEST(ClampedDisc, PressedOnAPlateAsTheReference) {
  InflationSetup setup = disc_setup(NeoHookean{Pressure(kShear)}, 0.0015);
  const PlateRow row{0.2, 1.0, .663653, 1.38367, .512886};
  setup.body = std::make_shared<PlateBelow>(-row.distance * kRadius);
  setup.foundation_pa_per_m =
      Eigen::VectorXd::Constant(setup.flat.vertices_m.rows(), 2e8);  // rigid: 5 micrometres
  const auto path = inflate(setup, {at_load(row.p)}, membrane_only(4));
  ASSERT_TRUE(path) << path.problem().message;
  const EquilibriumState& state = path->states.back();
  const double force = state.contact_pressure_pa.dot(state.contact_area_m2);
  expect_within("plate force/(mu t a)", force / (kShear * kThickness * kRadius), row.force, 0.02);
  expect_within("contact radius/a", std::sqrt(force / (M_PI * at_load(row.p).si())) / kRadius,
                row.contact_radius, 0.015);
  expect_within("volume/a3", volume(*path, state) / std::pow(kRadius, 3), row.volume, 0.015);
  // In the patch the contact pressure equals the inflation pressure.
  for (Eigen::Index v = 0; v < state.contact_pressure_pa.size(); ++v) {
    if (setup.flat.vertices_m.row(v).norm() > 0.3 * kRadius) continue;
    EXPECT_NEAR(state.contact_pressure_pa(v) / at_load(row.p).si(), 1.0, 0.01);
  }
}

}  // namespace
}  // namespace wrapgauge::published
