// How the error falls with the mesh edge, and how far the usual mesh is from the limit when sheets bend.
#include "tests/published/disc_fixture.hpp"

namespace wrapgauge::published {
namespace {

const Source kOrder{"Convergence under refinement",
                    "errors against the references above; orders are ours",
                    "derived",
                    {},
                    "refinement_test.cpp"};

// Round boundary drawn as finely as the mesh.
InflationSetup refined_disc(double edge_m) {
  const int sides = static_cast<int>(std::lround(2.0 * M_PI * kDiscRadius / edge_m));
  return disc_setup(NeoHookean{Pressure(kDiscShear)}, {.edge = Length(edge_m), .seam_edge = Length(edge_m)},
                    sides);
}

// Slope of log error over log edge, least squares.
double order_of(const std::vector<double>& edges, const std::vector<double>& errors) {
  double x = 0.0, y = 0.0, xx = 0.0, xy = 0.0;
  const auto n = static_cast<double>(edges.size());
  for (std::size_t k = 0; k < edges.size(); ++k) {
    const double u = std::log(edges[k]), v = std::log(std::abs(errors[k]));
    x += u, y += v, xx += u * u, xy += u * v;
  }
  return (n * xy - x * y) / (n * xx - x * x);
}

TEST(Refinement, HeightOfADiscConvergesWithTheSquareOfTheEdge) {
  const std::vector<double> edges{0.006, 0.0042, 0.003, 0.0021};
  std::vector<double> errors;
  for (double edge : edges) {
    const auto path = inflate(refined_disc(edge), {disc_load(1.0)}, membrane_only(1));
    ASSERT_TRUE(path) << path.problem().message;
    errors.push_back(height_m(*path, path->states.back()) / kDiscRadius - .53121);
  }
  expect_between(kOrder, "disc height, membrane alone, edges 6 to 2.1 mm: order", order_of(edges, errors),
                 1.9, 3.0);
}

double plate_force_n(InflationSetup setup, const InflationOptions& options) {
  press_on(setup, std::make_shared<PlateBelow>(-0.2 * kDiscRadius), kRigidPaPerM);
  const auto path = inflate(setup, {disc_load(1.0)}, options);
  if (!path) ADD_FAILURE() << path.problem().message;
  return path ? contact_force_n(path->states.back()) : 0.0;
}

TEST(Refinement, ForceOnAPlateConverges) {
  const std::vector<double> edges{0.006, 0.0042, 0.003, 0.0021};
  std::vector<double> errors;
  for (double edge : edges)
    errors.push_back(plate_force_n(refined_disc(edge), membrane_only(2)) /
                         (kDiscShear * kDiscThickness * kDiscRadius) -
                     1.38367);
  expect_between(kOrder, "force on a plate, membrane alone, edges 6 to 2.1 mm: order",
                 order_of(edges, errors), 1.0, 3.5);
}

// With bending the sheet turns beside its clamp within a layer narrower than the mesh, which has an energy of
// its own: the usual mesh is near the limit without resolving it, and so is one that does.
TEST(Refinement, WithBendingTheUsualMeshIsNearTheLimit) {
  InflationOptions bends = membrane_only(2);
  bends.bending = bends.contact_offset = true;
  const double usual = plate_force_n(refined_disc(0.004), bends),
               fine = plate_force_n(refined_disc(0.0015), bends);
  expect_within(kOrder, "force on a plate with bending, usual mesh of 4 mm against 1.5 mm: N", usual, fine,
                0.02);
  const FlatMeshOptions graded{.edge = 4.0 * mm, .seam_edge = 1.0 * mm, .seam_band = 6.0 * mm};
  expect_within(kOrder, "4 mm mesh graded to 1 mm in a band of 6 mm, against 1.5 mm: force, N",
                plate_force_n(disc_setup(NeoHookean{Pressure(kDiscShear)}, graded), bends), fine, 0.03);
}

}  // namespace
}  // namespace wrapgauge::published
