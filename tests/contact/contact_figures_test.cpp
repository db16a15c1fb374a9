#include <gtest/gtest.h>

#include "hand_made.hpp"

namespace wrapgauge {
namespace {

FigureInputs inputs_for(const hand_made::Worn& worn, double depth_m) {
  return {4.0, 4.0, Eigen::VectorXd::Constant(worn.setup.flat.vertices_m.rows(), depth_m)};
}

ContactFigures figures_of(const hand_made::Worn& worn, double depth_m = 0.02) {
  const EquilibriumState& state = worn.path.states.back();
  const ContactMap map = contact_map(worn.setup, worn.path, state);
  return contact_figures(worn.body, worn.setup, inputs_for(worn, depth_m), worn.path, state, map);
}

TEST(ContactFigures, OfAnEvenlyPressedPadAreThatPressure) {
  hand_made::Worn worn = hand_made::flat_pad(10, 0.04);
  worn.path.states.back().contact_pressure_pa.setConstant(3e3);
  const ContactFigures figures = figures_of(worn);
  const ChamberFigures& pad = figures.chambers.at(0);
  EXPECT_NEAR(pad.force.si(), 3e3 * 16e-4, 1e-9);
  EXPECT_NEAR(pad.mean / kPa, 3.0, 1e-9);
  EXPECT_NEAR(pad.peak / kPa, 3.0, 1e-9);
  EXPECT_NEAR(pad.p95 / kPa, 3.0, 1e-9);
  EXPECT_NEAR(pad.contact_area / cm2, 16.0, 1e-9);
  EXPECT_NEAR(pad.contact_fraction, 1.0, 1e-12);
  EXPECT_NEAR(figures.total_force.si(), 4.8, 1e-9);
  EXPECT_EQ(english(figures.peak_part), "middle");
}

TEST(ContactFigures, MeanIsOverTheDrawnAreaEvenWhenThePadShrinks) {
  hand_made::Worn worn = hand_made::flat_pad(10, 0.04);
  EquilibriumState& state = worn.path.states.back();
  state.positions_m.col(0) *= 0.5;
  state.contact_pressure_pa.setConstant(3e3);
  const ChamberFigures pad = figures_of(worn).chambers.at(0);
  EXPECT_NEAR(pad.force.si(), 3e3 * 8e-4, 1e-9);
  EXPECT_NEAR(pad.mean / kPa, 1.5, 1e-9);
  EXPECT_NEAR(pad.contact_fraction, 1.0, 1e-12);
}

TEST(ContactFigures, PercentileOfARampIsNinetyFivePercentOfIt) {
  hand_made::Worn worn = hand_made::flat_pad(10, 0.04);
  worn.path.states.back().contact_pressure_pa = worn.setup.flat.vertices_m.col(0) / 0.04 * 1e3;
  EXPECT_NEAR(figures_of(worn).chambers.at(0).p95.si(), 950.0, 15.0);
}

TEST(ContactFigures, StrainIsIndentationOverTissueDepth) {
  hand_made::Worn worn = hand_made::flat_pad(10, 0.04);
  worn.path.states.back().indentation_m[60] = 3e-3;
  const ChamberFigures pad = figures_of(worn, 0.012).chambers.at(0);
  EXPECT_NEAR(pad.indentation_max / mm, 3.0, 1e-12);
  EXPECT_NEAR(pad.tissue_strain, 0.25, 1e-12);
}

TEST(ContactFigures, StretchAndBreakFollowAnEvenStretch) {
  hand_made::Worn worn = hand_made::flat_pad(6, 0.04);
  worn.path.states.back().positions_m.col(0) *= 1.4;
  const ChamberFigures pad = figures_of(worn).chambers.at(0);
  EXPECT_NEAR(pad.stretch_max, 1.4, 1e-9);
  EXPECT_NEAR(pad.share_of_break, 0.1, 1e-9);
  // Plane-stress neo-Hookean with the other stretch held at 1: Cauchy tension h l3 mu (l^2 - l^-2) along the
  // pull, one sheet of 1.5 mm, l3 = 1/1.4.
  const double expected = 1.5e-3 / 1.4 * 30e3 * (1.4 * 1.4 - 1.0 / (1.4 * 1.4));
  EXPECT_NEAR(pad.seam_tension.si(), expected, 1e-6 * expected);
}

TEST(ContactFigures, InsetSeamsCountForTheChamberAndOtherWeldsDoNot) {
  hand_made::Worn worn = hand_made::flat_pad(10, 0.04);
  worn.setup.layout.chambers[0].boundary_m = hand_made::rectangle(0.0, 0.0, 0.02, 0.04);
  for (std::size_t t = 0; t < worn.setup.flat.regions.size(); ++t) {
    const auto row = worn.setup.flat.triangles.row(static_cast<Eigen::Index>(t));
    double x = 0.0;
    for (int k = 0; k < 3; ++k) x += worn.setup.flat.vertices_m(row[k], 0) / 3.0;
    if (x < 0.008 || x > 0.02) worn.setup.flat.regions[t] = {RegionKind::kWeld, 0};
  }
  worn.path.sheet = make_sheet_mesh(worn.setup.flat);
  worn.path.states = {hand_made::untouched(worn.setup.flat, worn.path.sheet)};
  worn.path.states.back().contact_pressure_pa.setConstant(2e3);
  const ContactFigures figures = figures_of(worn);
  EXPECT_NEAR(figures.chambers.at(0).contact_area / cm2, 8.0, 1e-9);
  EXPECT_NEAR(figures.total_force.si(), 2e3 * 16e-4, 1e-9);
}

}  // namespace
}  // namespace wrapgauge
