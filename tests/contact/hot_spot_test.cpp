// A small hot spot as limits are stated for it: over one square centimetre, not at its hottest point.
#include <gtest/gtest.h>

#include "hand_made.hpp"

namespace wrapgauge {
namespace {

// A pad of 40 mm on a grid of 1 mm; 20 kPa at 5 x 5 vertices about its middle, nothing elsewhere. Pressure is
// linear in between, so each hot vertex pushes with 20 kPa over its own 1 mm2: 0.5 N in all, all of it well
// within the disc of 1 cm2, whose mean is then 0.5 N / 1 cm2 = 5 kPa.
hand_made::Worn pad_with_hot_spot() {
  hand_made::Worn worn = hand_made::flat_pad(40, 0.04);
  EquilibriumState& state = worn.path.states.back();
  for (Eigen::Index v = 0; v < state.contact_pressure_pa.size(); ++v) {
    const Vec2 off = worn.setup.flat.vertices_m.row(v).transpose() - Vec2(0.02, 0.02);
    if (off.cwiseAbs().maxCoeff() < 2.5e-3) state.contact_pressure_pa[v] = 20e3;
  }
  return worn;
}

constexpr double kByHand_pa = 20e3 * 25e-6 / 1e-4;

TEST(OneSquareCentimetre, MeanOverASmallHotSpotIsItsForceOverOneSquareCentimetre) {
  const hand_made::Worn worn = pad_with_hot_spot();
  const ContactMap map = contact_map(worn.setup, worn.path, worn.path.states.back());
  EXPECT_DOUBLE_EQ(map.on_layout_pa.maxCoeff(), 20e3);
  EXPECT_NEAR(map.mean_1cm2_pa.maxCoeff(), kByHand_pa, 0.03 * kByHand_pa);
}

TEST(OneSquareCentimetre, PeakOfAChamberAndAnywhereIsThatMeanAndLiesOnTheSpot) {
  const hand_made::Worn worn = pad_with_hot_spot();
  const EquilibriumState& state = worn.path.states.back();
  const ContactMap map = contact_map(worn.setup, worn.path, state);
  const FigureInputs inputs{4.0, 4.0, Eigen::VectorXd::Constant(worn.setup.flat.vertices_m.rows(), 0.02)};
  const ContactFigures figures = contact_figures(worn.body, worn.setup, inputs, worn.path, state, map);
  ASSERT_EQ(figures.chambers.size(), 1u);
  const ChamberFigures& pad = figures.chambers[0];
  EXPECT_NEAR(pad.peak.si(), kByHand_pa, 0.03 * kByHand_pa);
  EXPECT_NEAR(figures.peak_anywhere.si(), kByHand_pa, 0.03 * kByHand_pa);
  EXPECT_LT((pad.peak_at_flat_m - Vec2(0.02, 0.02)).norm(), 2e-3);
  EXPECT_LT((pad.peak_at_m - Vec3(0.02, 0.02, 0.0)).norm(), 2e-3);
  EXPECT_NEAR(pad.mean.si(), 0.5 / 16e-4, 1e-6);  // the same force over the chamber as drawn
  EXPECT_NEAR(pad.force.si(), 0.5, 1e-9);
}

// At a corner of the pad there is a quarter of a disc, and the mean is over that quarter.
TEST(OneSquareCentimetre, AtTheRimTheMeanIsOverThePartThatExists) {
  hand_made::Worn worn = hand_made::flat_pad(40, 0.04);
  worn.path.states.back().contact_pressure_pa.setConstant(3e3);
  const ContactMap map = contact_map(worn.setup, worn.path, worn.path.states.back());
  EXPECT_NEAR(map.mean_1cm2_pa.minCoeff(), 3e3, 1e-6);
  EXPECT_NEAR(map.mean_1cm2_pa.maxCoeff(), 3e3, 1e-6);
}

}  // namespace
}  // namespace wrapgauge
