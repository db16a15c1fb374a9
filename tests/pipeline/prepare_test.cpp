// What a plan says about the tissue is what the mechanics presses on.
#include "model/pipeline/prepare.hpp"

#include <gtest/gtest.h>

#include "model/body/part_rules.hpp"
#include "tests/geometry/shapes.hpp"

namespace wrapgauge {
namespace {

Polygon square(double half_m) {
  return {{-half_m, -half_m}, {half_m, -half_m}, {half_m, half_m}, {-half_m, half_m}};
}

// A pad of one chamber half-way along a round limb that has no bony sites; tissue "forearm relaxed": 25 kPa,
// 20 mm.
Plan pad_plan() {
  Plan plan;
  plan.name = "pad";
  plan.part = BodyPart::kForearm;
  plan.sites_confirmed = SitesConfirmed{"the examiner", "2026-05-04", "felt all round"};
  plan.tissue_site = "forearm relaxed";
  plan.layout.name = "pad";
  plan.layout.outline_m = square(0.02);
  plan.layout.chambers = {{"cell", square(0.012), {}, {}}};
  plan.layout.inlets = {{"tube", {0.0, 0.0}}};
  plan.layout.skin_sheet = plan.layout.outer_sheet = {"00-30", 2.0 * mm};
  plan.placement.anchor = AnchorAtStation{50.0 * mm, 0.0};
  plan.inflation.resize(1);
  plan.inflation[0].inlet = "tube";
  plan.inflation[0].target = 2.0 * kPa;
  plan.mesh_edge = 10.0 * mm;
  return plan;
}

Body round_limb() {
  Body body;
  body.surface = shapes::tube(0.04, 0.04, 0.1, 72, 20);
  return body;
}

std::optional<Prepared> prepared(const Plan& plan) {
  const auto resources = read_resources(WRAPGAUGE_SOURCE_DIR "/resources");
  EXPECT_TRUE(resources.ok());
  const auto body = body_of_plan(plan, round_limb());
  EXPECT_TRUE(body.ok());
  if (!resources || !body) return std::nullopt;
  auto ready = prepare(plan, *body, *resources, mesh_of_plan(plan));
  EXPECT_TRUE(ready.ok()) << (ready ? "" : ready.problem().message);
  if (!ready) return std::nullopt;
  return std::move(ready).value();
}

TEST(Prepare, TenseTissueIsStifferWhereTheOutputSaysTense) {
  Plan plan = pad_plan();
  const auto relaxed = prepared(plan);
  plan.posture = Posture::kTense;
  const auto tense = prepared(plan);
  ASSERT_TRUE(relaxed && tense);
  EXPECT_EQ(tense->tissue.name, "forearm relaxed, tense");
  EXPECT_NEAR(tense->tissue.young / kPa, 60.0, 1e-9);  // as the table's tense row
  EXPECT_NEAR(relaxed->setup.foundation_pa_per_m.maxCoeff(), 25e3 / 0.020, 1e-6);
  EXPECT_NEAR(tense->setup.foundation_pa_per_m.maxCoeff(), 60e3 / 0.020, 1e-6);
  EXPECT_NEAR(tense->setup.foundation_pa_per_m.minCoeff(), 60e3 / 0.020, 1e-6);
}

TEST(Prepare, TenseTissueIsStifferAsACoupledLayerToo) {
  Plan plan = pad_plan();
  plan.posture = Posture::kTense;
  plan.tissue_model = TissueModel::kCoupled;
  plan.tissue_poisson = 0.45;
  const auto tense = prepared(plan);
  ASSERT_TRUE(tense && tense->setup.coupled_tissue);
  EXPECT_NEAR(tense->setup.coupled_tissue->young_pa, 60e3, 1e-6);
  EXPECT_DOUBLE_EQ(tense->setup.coupled_tissue->poisson, 0.45);
}

TEST(Prepare, TakesTheStiffnessFactorThePoissonRatioAndTheFrictionOfThePlan) {
  Plan plan = pad_plan();
  plan.tissue_stiffness_factor = 1.6;
  plan.tissue_poisson = 0.3;
  plan.friction = 0.37;
  const auto ready = prepared(plan);
  ASSERT_TRUE(ready);
  // K = (1 - nu) E / ((1 + nu)(1 - 2 nu) h).
  EXPECT_NEAR(ready->setup.foundation_pa_per_m.maxCoeff(), 0.7 * 1.6 * 25e3 / (1.3 * 0.4 * 0.020), 1e-3);
  EXPECT_DOUBLE_EQ(ready->setup.friction, 0.37);
}

// Over bone a device presses harder: not knowing where the bones lie never makes the tissue thicker.
TEST(Prepare, TissueIsAsThinAsOverBoneUntilTheSitesAreKnown) {
  Plan plan = pad_plan();
  plan.sites_confirmed.reset();
  auto ready = prepared(plan);
  ASSERT_TRUE(ready && ready->bone_anywhere);
  EXPECT_NEAR(ready->bed.depth_m.maxCoeff() * 1e3, 3.0, 1e-12);  // the shallowest site of a forearm
  EXPECT_NEAR(*limit_inputs(plan, *ready).bone_anywhere / mm, 3.0, 1e-12);

  plan.tissue_depth_mm = {12.0};  // one depth for the whole body says nothing of where the bones lie
  EXPECT_NEAR(prepared(plan)->bed.depth_m.maxCoeff() * 1e3, 3.0, 1e-12);
  plan.tissue_depth_mm = {1.5};
  EXPECT_NEAR(prepared(plan)->bed.depth_m.maxCoeff() * 1e3, 1.5, 1e-12);

  plan.tissue_depth_mm.assign(static_cast<std::size_t>(round_limb().surface.vertices_m.rows()), 12.0);
  plan.tissue_depth_mm.front() = 11.0;  // a map does
  ready = prepared(plan);
  EXPECT_FALSE(ready->bone_anywhere);
  EXPECT_NEAR(ready->bed.depth_m.maxCoeff() * 1e3, 12.0, 1e-12);
}

TEST(Prepare, ProposedSitesLeaveTheTissueThinUntilTheyAreConfirmed) {
  Plan plan = pad_plan();
  plan.sites_confirmed.reset();
  plan.bony_sites = {{"styloid", {0.04, 0.0, 0.02}, 5.0 * mm, 4.0 * mm, SiteKind::kBone, kProposedSite}};
  EXPECT_TRUE(prepared(plan)->bone_anywhere);
  plan.bony_sites.front().status = "confirmed";
  EXPECT_FALSE(prepared(plan)->bone_anywhere);
}

TEST(Prepare, ATestObjectHasTheTissueThatItsPlanGivesIt) {
  Plan plan = pad_plan();
  plan.sites_confirmed.reset();
  plan.part = BodyPart::kTestObject;
  const auto ready = prepared(plan);
  EXPECT_FALSE(ready->bone_anywhere);
  EXPECT_NEAR(ready->bed.depth_m.maxCoeff() * 1e3, 20.0, 1e-12);
}

TEST(Prepare, ASheetIsKnownNoFurtherThanItsElongationAtBreak) {
  const auto ready = prepared(pad_plan());
  ASSERT_TRUE(ready);
  EXPECT_DOUBLE_EQ(ready->setup.skin_stretch_limit,
                   std::min(ready->skin_grade.stretch_max, 1.0 + ready->skin_grade.elongation_at_break));
}

TEST(Prepare, AnInletThatThePlanLeavesOutIsRefusedByName) {
  Plan plan = pad_plan();
  plan.inflation.clear();
  Body limb;
  limb.surface = shapes::tube(0.04, 0.04, 0.1, 72, 20);
  const auto resources = read_resources(WRAPGAUGE_SOURCE_DIR "/resources");
  ASSERT_TRUE(resources.ok());
  const auto body = body_of_plan(plan, limb);
  ASSERT_TRUE(body.ok());
  const auto ready = prepare(plan, *body, *resources, mesh_of_plan(plan));
  ASSERT_FALSE(ready.ok());
  EXPECT_NE(ready.problem().message.find("inlet 'tube' is given no pressure or volume"), std::string::npos);
}

}  // namespace
}  // namespace wrapgauge
