// Layered sheets: a fused stack with one sheet stretched curls as a bimetal, an inflated pad towards its
// thick sheet.
#include "model/inflation/curl.hpp"

#include <gtest/gtest.h>

#include <Eigen/Dense>
#include <iostream>

#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

// Timoshenko 1925, "Analysis of bi-metal thermostats", J. Opt. Soc. Am. 11: m = t1/t2, n = E1/E2, from
// memory.
double bimetal_curvature(double strain, double t1, double t2, double n) {
  const double m = t1 / t2, h = t1 + t2;
  return 6.0 * strain * std::pow(1.0 + m, 2) /
         (h * (3.0 * std::pow(1.0 + m, 2) + (1.0 + m * n) * (m * m + 1.0 / (m * n))));
}

// Least-squares fit z = a + b x + 1/2 c x^2 (+ d y): c.
double fitted_curvature(const Points3& points_m) {
  Eigen::MatrixXd basis(points_m.rows(), 4);
  basis.col(0).setOnes();
  basis.col(1) = points_m.col(0);
  basis.col(2) = 0.5 * points_m.col(0).cwiseAbs2();
  basis.col(3) = points_m.col(1);
  return Eigen::VectorXd(basis.colPivHouseholderQr().solve(points_m.col(2)))(2);
}

InflationOptions closely() {
  InflationOptions options;
  options.steps = 1;
  options.residual_tolerance = 1e-4;
  options.closed_state = false;
  return options;
}

TEST(Curl, FusedStackWithOneSheetStretchedIsABimetal) {
  for (const double modulus_ratio : {1.0, 3.0}) {
    InflationSetup setup = small::plain_sheet(0.060, 0.020, 0.003);
    setup.layout.skin_sheet.thickness = 1.0 * mm;
    setup.layout.outer_sheet.thickness = 2.0 * mm;
    setup.layout.skin_sheet.prestretch = 1.02;
    setup.skin_law = NeoHookean{modulus_ratio * 30.0 * kPa};
    const auto path = inflate(setup, {}, closely());
    ASSERT_TRUE(path) << path.problem().message;
    const double ours = fitted_curvature(path->states.back().positions_m);
    const double reference = -bimetal_curvature(std::log(1.02), 0.001, 0.002, modulus_ratio);
    std::cout << "  bimetal, moduli 1:" << modulus_ratio << ": curvature ours " << ours << " 1/m, reference "
              << reference << " 1/m\n";
    EXPECT_NEAR(ours / reference, 1.0, 0.05);  // towards the stretched skin sheet, which lies below
  }
}

TEST(Curl, EqualSheetsStayFlat) {
  const auto path = inflate(small::plain_sheet(0.060, 0.020, 0.003), {}, closely());
  ASSERT_TRUE(path) << path.problem().message;
  EXPECT_LT(path->states.back().positions_m.col(2).cwiseAbs().maxCoeff(), 1e-9);
}

// A long chamber with sheets of 1 and 3 mm, free: inflation lengthens the thin sheet more, as it carries the
// same end force with less, so the rim bends about the thick side.
double rim_curvature(double skin_mm, double outer_mm) {
  InflationSetup setup;
  setup.layout.outline_m = small::rectangle(-0.055, -0.017, 0.055, 0.017);
  setup.layout.chambers.push_back({"long", small::rectangle(-0.050, -0.012, 0.050, 0.012), {}, {}});
  setup.layout.inlets.push_back({"inlet", {0.0, 0.0}});
  setup.layout.skin_sheet = {"soft", skin_mm * mm};
  setup.layout.outer_sheet = {"soft", outer_mm * mm};
  FlatMeshOptions options;
  options.edge = options.seam_edge = 4.0 * mm;
  setup.flat = triangulate_layout(setup.layout, std::nullopt, options).value();
  setup.skin_law = setup.outer_law = NeoHookean{30.0 * kPa};
  const Eigen::Index count = setup.flat.vertices_m.rows();
  small::lay_flat(setup);
  InflationOptions solve;
  solve.steps = 2;
  const auto path = inflate(setup, {3.0 * kPa}, solve);
  EXPECT_TRUE(path) << path.problem().message;
  if (!path) return 0.0;
  std::vector<int> rim;  // nodes of the two long rims
  for (int v = 0; v < count; ++v)
    if (std::abs(std::abs(setup.flat.vertices_m(v, 1)) - 0.017) < 1e-9)
      rim.push_back(path->sheet.skin_node[v]);
  Points3 points(static_cast<Eigen::Index>(rim.size()), 3);
  for (std::size_t k = 0; k < rim.size(); ++k)
    points.row(static_cast<Eigen::Index>(k)) = path->states.back().positions_m.row(rim[k]);
  return fitted_curvature(points);
}

TEST(Curl, InflatedPadBendsAboutItsThickSheet) {
  const double thin_skin = rim_curvature(1.0, 3.0), thin_outer = rim_curvature(3.0, 1.0),
               even = rim_curvature(2.0, 2.0);
  std::cout << "  rim curvature, 1/m: thin skin " << thin_skin << ", thin outer " << thin_outer << ", even "
            << even << "\n";
  EXPECT_GT(thin_skin, 0.2);  // ends rise towards the thick outer sheet
  EXPECT_NEAR(thin_outer / thin_skin, -1.0, 0.02);
  EXPECT_LT(std::abs(even), 0.01 * thin_skin);
}

}  // namespace
}  // namespace wrapgauge
