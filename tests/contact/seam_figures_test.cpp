#include "model/contact/seam_figures.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>

#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

// A square pad of two equal sheets, free, with one round inset seam off its middle.
InflationSetup spotted_pad(double edge_m, double spot_radius_m) {
  InflationSetup setup;
  setup.layout.outline_m = small::rectangle(-0.035, -0.035, 0.035, 0.035);
  Chamber chamber{"pad", small::rectangle(-0.030, -0.030, 0.030, 0.030), {}, {}};
  if (spot_radius_m > 0.0) chamber.inset_spots.push_back({{0.005, 0.0}, Length(spot_radius_m)});
  setup.layout.chambers.push_back(chamber);
  setup.layout.inlets.push_back({"inlet", {-0.02, 0.0}});
  setup.layout.skin_sheet = setup.layout.outer_sheet = {"soft", 1.5 * mm};
  FlatMeshOptions options;
  options.edge = Length(edge_m);
  options.seam_edge = Length(0.5 * edge_m);
  setup.flat = triangulate_layout(setup.layout, std::nullopt, options).value();
  setup.skin_law = setup.outer_law = NeoHookean{30.0 * kPa};
  small::lay_flat(setup);
  return setup;
}

std::vector<SeamFigures> seams_of(const InflationSetup& setup, Pressure pressure) {
  InflationOptions options;
  options.steps = 2;
  const auto path = inflate(setup, {pressure}, options);
  EXPECT_TRUE(path) << path.problem().message;
  if (!path) return {};
  return seam_figures(setup, path->sheet, sheet_stress(setup, path->sheet, path->states.back().positions_m));
}

TEST(SeamFigures, AnInsetSpotGathersMoreTensionThanTheEdgeAndIsNamedFirst) {
  const std::vector<SeamFigures> seams = seams_of(spotted_pad(0.005, 0.004), 2.0 * kPa);
  ASSERT_EQ(seams.size(), 2u);
  for (const SeamFigures& seam : seams)
    std::cout << "  " << english(seam.seam) << ": largest " << seam.largest / N_per_mm << ", mean "
              << seam.mean / N_per_mm << " N/mm, ratio " << seam.concentration << "\n";
  EXPECT_EQ(english(seams[0].seam), "inset spot 1 of chamber 'pad'");
  EXPECT_TRUE(seams[0].inset);
  EXPECT_FALSE(seams[1].inset);
  EXPECT_GT(seams[0].mean / seams[1].mean, 1.2);
  EXPECT_GE(seams[0].concentration, 1.0);
  // On the spot's own line, as drawn.
  EXPECT_NEAR((seams[0].at_flat_m - Vec2(0.005, 0.0)).norm(), 0.004, 0.0005);
  EXPECT_NEAR(seams[0].length / mm, 2.0 * M_PI * 4.0, 1.0);
}

// The skin sheet pulls with 100 N/m everywhere, the outer one with 250 N/m.
TEST(SeamFigures, TheHarderPullOfTheTwoSheetsCounts) {
  const InflationSetup setup = spotted_pad(0.010, 0.0);
  const SheetMesh sheet = make_sheet_mesh(setup.flat);
  SheetStress stress;
  stress.nominal_tension_n_per_m.setZero(3, 2 * sheet.triangles.rows());
  for (Eigen::Index t = 0; t < sheet.triangles.rows(); ++t) {
    const double pull = sheet.layer[static_cast<std::size_t>(t)] == SheetLayer::kOuter ? 250.0 : 100.0;
    stress.nominal_tension_n_per_m.middleCols<2>(2 * t).topRows<2>() = pull * Eigen::Matrix2d::Identity();
  }
  const std::vector<SeamFigures> seams = seam_figures(setup, sheet, stress);
  ASSERT_EQ(seams.size(), 1u);
  EXPECT_NEAR(seams[0].largest.si(), 250.0, 1e-9);
  EXPECT_NEAR(seams[0].mean.si(), 250.0, 1e-9);
  EXPECT_NEAR(seams[0].length / mm, 240.0, 1e-6);
  EXPECT_EQ(english(seams[0].sheet), "outer");
}

TEST(SeamFigures, TheEdgeOfALongStripCarriesPressureTimesRadius) {
  // Free, symmetric, long: the section is a circle, so tension is p r, r from the sheet's own length.
  InflationSetup setup = spotted_pad(0.004, 0.0);
  setup.layout.chambers[0].boundary_m = small::rectangle(-0.080, -0.012, 0.080, 0.012);
  setup.layout.outline_m = small::rectangle(-0.086, -0.018, 0.086, 0.018);
  FlatMeshOptions options;
  options.edge = options.seam_edge = 3.0 * mm;
  setup.flat = triangulate_layout(setup.layout, std::nullopt, options).value();
  small::lay_flat(setup);
  InflationOptions membrane;
  membrane.bending = false;
  membrane.closed_state = false;
  membrane.relaxed_compression = true;  // its ends pucker
  membrane.steps = 2;
  const double pressure = 1000.0;
  const auto path = inflate(setup, {Pressure(pressure)}, membrane);
  ASSERT_TRUE(path) << path.problem().message;
  const SheetStress stress = sheet_stress(setup, path->sheet, path->states.back().positions_m);
  const std::vector<SeamFigures> seams = seam_figures(setup, path->sheet, stress);
  ASSERT_EQ(seams.size(), 1u);
  // Length of one sheet across at mid length: drawn 24 mm, stretched by lambda; half a circle.
  const double radius = 0.024 / M_PI;
  std::cout << "  mean tension / (p r at rest length) " << seams[0].mean.si() / (pressure * radius) << "\n";
  // The mean of the whole edge: the short ends, which pucker, carry less.
  EXPECT_GT(seams[0].mean.si(), 0.8 * pressure * radius);
  EXPECT_LT(seams[0].mean.si(), 1.2 * pressure * radius);
}

}  // namespace
}  // namespace wrapgauge
