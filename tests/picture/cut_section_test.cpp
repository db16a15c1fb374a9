#include "app/picture/cut_section.hpp"

#include <gtest/gtest.h>

#include <numbers>

#include "app/job/job.hpp"
#include "model/body/girth.hpp"

namespace wrapgauge {
namespace {

constexpr double kStation_m = 0.1;  // of the anchor

Polygon box_m(double left, double low, double right, double high) {
  return {{left, low}, {right, low}, {right, high}, {left, high}};
}

// One chamber held to a cylinder by its rim.
Plan one_chamber_plan() {
  Plan plan;
  plan.name = "pad";
  plan.body = BodyForm{"cylinder", {}, {}};
  plan.part = BodyPart::kForearm;
  plan.tissue_site = "forearm relaxed";
  plan.layout.name = "pad";
  plan.layout.rim_bonded = true;
  plan.layout.outline_m = box_m(-0.03, -0.03, 0.03, 0.03);
  plan.layout.chambers = {{"cell", box_m(-0.02, -0.02, 0.02, 0.02), {}, {}}};
  plan.layout.inlets = {{"tube", {0.0, 0.0}}};
  plan.layout.skin_sheet = {"00-30", 2.0 * mm, 1.0};
  plan.layout.outer_sheet = {"00-30", 1.5 * mm, 1.0};
  plan.placement.anchor = AnchorAtStation{kStation_m * 1e3 * mm, 0.0};
  plan.inflation = {{"tube", 2.0 * kPa, {}}};
  plan.mesh_edge = 6.0 * mm;
  plan.solver.steps = 3;
  return plan;
}

const Estimate& pad() {
  static const Estimate solved = [] {
    const auto job = complete_job(one_chamber_plan());
    return estimate(job->plan, job->body, job->resources, {.mesh_error = false, .relief = false}).value();
  }();
  return solved;
}

struct Cut {
  const Estimate& of = pad();
  const EquilibriumState& state = of.path.states.back();
  PlaneSections sections{of.body.surface};
  SkinPoints on_skin{of.wrap.worn_m, of.wrap.outward_at_worn};
  Eigen::VectorXd share = Eigen::VectorXd::Zero(of.map.on_layout_pa.size());
  CutSection section = at(kStation_m);

  CutSection at(double station_m) const {
    return cut_section(of, sections,
                       {state.positions_m, on_skin, state.indentation_m, of.map.on_layout_pa, share},
                       station_m);
  }
  double most_out_m(SheetLayer layer) const {
    double most = 0.0;
    for (const CutSheet& piece : section.sheets)
      if (piece.layer == layer) most = std::max({most, piece.from_m.norm(), piece.to_m.norm()});
    return most;
  }
};

TEST(CutSection, OfTheSkinIsTheGirthThere) {
  const Cut cut;
  ASSERT_EQ(cut.section.skin_m.size(), 1u);
  double round_m = 0.0;
  const CutLine& line = cut.section.skin_m[0];
  for (std::size_t k = 0; k < line.size(); ++k) round_m += (line[(k + 1) % line.size()] - line[k]).norm();
  EXPECT_NEAR(round_m, girth_at(cut.of.body, kStation_m * 1e3 * mm).girth.si(), 1e-6);
}

TEST(CutSection, TheAnchorIsUp) {
  const Cut cut;
  double highest = -1.0;
  Vec2 at = Vec2::Zero();
  for (const CutSheet& piece : cut.section.sheets)
    if (piece.from_m.y() > highest) highest = piece.from_m.y(), at = piece.from_m;
  EXPECT_LT(std::abs(at.x()), 0.3 * at.y());
}

TEST(CutSection, ShowsTheOuterSheetStandingOffTheSkinsWithAirBetween) {
  const Cut cut;
  EXPECT_GT(cut.most_out_m(SheetLayer::kOuter), cut.most_out_m(SheetLayer::kSkin) + 1e-3);
  ASSERT_EQ(cut.section.air_m.size(), 1u) << "one chamber is cut once";
  double area_m2 = 0.0;
  const CutLine& air = cut.section.air_m[0];
  for (std::size_t k = 0; k < air.size(); ++k) {
    const Vec2 &a = air[k], &b = air[(k + 1) % air.size()];
    area_m2 += 0.5 * (a.x() * b.y() - a.y() * b.x());
  }
  // As wide as the chamber, the mean height is less than the highest and not nothing.
  const double volume_m3 = cut.state.group_volume_m3[0];
  EXPECT_NEAR(std::abs(area_m2) * 0.04 / volume_m3, 1.2, 0.5) << "a bulge is highest in its middle";
}

// Silicone keeps its volume: where a sheet is stretched it is thinner than it was cast, and the weld is as
// thick as both.
TEST(CutSection, DrawsSheetsAsThickAsTheyAreStretched) {
  const Cut cut;
  for (const CutSheet& piece : cut.section.sheets) {
    const double cast_m = piece.layer == SheetLayer::kSkin    ? 2.0e-3
                          : piece.layer == SheetLayer::kOuter ? 1.5e-3
                                                              : 3.5e-3;
    EXPECT_LT(piece.thickness_m, 1.1 * cast_m);
    EXPECT_GT(piece.thickness_m, 0.3 * cast_m);
  }
  double thinnest = 1.0;
  for (const CutSheet& piece : cut.section.sheets)
    if (piece.layer == SheetLayer::kOuter) thinnest = std::min(thinnest, piece.thickness_m);
  EXPECT_LT(thinnest, 1.5e-3) << "a bulge is stretched";
}

TEST(CutSection, PressedSkinLiesAsDeepAsItIsLoweredAndBoneAsDeepAsTheTissue) {
  const Cut cut;
  ASSERT_GT(cut.section.pressed.size(), 5u);
  const double radius_m = girth_at(cut.of.body, kStation_m * 1e3 * mm).girth.si() / (2.0 * std::numbers::pi);
  const double depth_m = cut.of.tissue_depth_m[0], most_in_m = cut.state.indentation_m.maxCoeff();
  double deepest = 0.0;
  for (const CutSkin& piece : cut.section.pressed) {
    deepest = std::max(deepest, radius_m - piece.from_m.norm());
    EXPECT_NEAR(piece.bone_from_m.norm(), radius_m - depth_m, 1e-3);
    EXPECT_LT(piece.inward.dot(piece.from_m.normalized()), -0.9);
    EXPECT_LE(piece.pressure_pa, cut.of.map.on_layout_pa.maxCoeff());
  }
  EXPECT_GT(deepest, 0.3 * most_in_m);
  EXPECT_LT(deepest, most_in_m + 0.5e-3);
}

TEST(CutSection, BesideTheDeviceIsSkinAlone) {
  const Cut cut;
  const auto [first, last] = device_stations_m(cut.of, cut.on_skin);
  EXPECT_LT(first, kStation_m);
  EXPECT_GT(last, kStation_m);
  const CutSection beside = cut.at(last + 0.01);
  EXPECT_EQ(beside.skin_m.size(), 1u);
  EXPECT_TRUE(beside.sheets.empty() && beside.pressed.empty() && beside.air_m.empty());
}

}  // namespace
}  // namespace wrapgauge
