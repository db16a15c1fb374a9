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

// With bending the clamped edge is a boundary layer, resolved only by meshes finer than the sheet's bending
// length. Irregular meshes of one size scatter by about 1.5 % here.
TEST(Refinement, WithBendingGradingBesideTheSeamBringsTheUsualMeshNearTheLimit) {
  InflationOptions bends = membrane_only(2);
  bends.bending = bends.contact_offset = true;
  const double coarse = plate_force_n(refined_disc(0.0036), bends),
               middle = plate_force_n(refined_disc(0.0024), bends),
               fine = plate_force_n(refined_disc(0.0016), bends);
  const double order = std::log((middle - coarse) / (fine - middle)) / std::log(1.5);
  const double limit = fine + (fine - middle) / (std::pow(1.5, order) - 1.0);
  tell(kOrder, "force on a plate with bending, edges 3.6, 2.4, 1.6 mm: forces, N",
       fixed_text(coarse, 4) + ", " + fixed_text(middle, 4) + ", " + fixed_text(fine, 4));
  tell(kOrder, "force on a plate with bending: order found", fixed_text(order, 2));
  tell(kOrder, "force on a plate with bending: extrapolated, N", fixed_text(limit, 4));
  const HyperelasticLaw law = NeoHookean{Pressure(kDiscShear)};
  tell(kOrder, "usual mesh of 4 mm, difference from the extrapolated force",
       fixed_text(100.0 * (plate_force_n(disc_setup(law, 0.004), bends) / limit - 1.0), 2) + " %");
  const FlatMeshOptions graded{.edge = 4.0 * mm, .seam_edge = 1.0 * mm, .seam_band = 6.0 * mm};
  expect_within(kOrder, "4 mm mesh graded to 1 mm in a band of 6 mm: force, N",
                plate_force_n(disc_setup(law, graded), bends), limit, 0.03);
}

}  // namespace
}  // namespace wrapgauge::published
