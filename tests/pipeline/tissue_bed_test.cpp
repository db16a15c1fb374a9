#include "model/pipeline/tissue_bed.hpp"

#include <gtest/gtest.h>

#include "model/material/posture.hpp"
#include "model/pipeline/no_go.hpp"
#include "model/pipeline/region_places.hpp"

namespace wrapgauge {
namespace {

const TissueSite kForearm{"forearm relaxed", 25.0 * kPa, 0.0, 20.0 * mm, "table", "judgement"};

// Five places on a line along the axis, 10 mm apart, on a limb of 40 mm radius.
Points3 line_of_places() {
  Points3 worn(5, 3);
  for (int i = 0; i < 5; ++i) worn.row(i) << 0.04, 0.0, 0.1 + 0.01 * i;
  return worn;
}

TEST(TissueBed, RegionsPaintDepthAndStiffnessAndFadeOut) {
  const SkinRegion soft{"belly", NearPoint{"", {0.04, 0, 0.1}, 5.0 * mm}, false, 40.0 * mm, 0.5, 10.0 * mm};
  const auto bed = tissue_bed({}, kForearm, {{}, {soft}, 1.0}, line_of_places());
  ASSERT_TRUE(bed.ok());
  EXPECT_NEAR(bed->depth_m[0] * 1e3, 40.0, 1e-9);
  EXPECT_NEAR(bed->depth_m[1] * 1e3, 30.0, 1e-9);  // half-way through the fade
  EXPECT_NEAR(bed->depth_m[2] * 1e3, 20.0, 1e-9);
  // k = E / h: 12.5 kPa over 40 mm, 18.75 over 30 mm, 25 over 20 mm.
  EXPECT_NEAR(bed->foundation_pa_per_m[0], 12.5e3 / 0.040, 1e-6);
  EXPECT_NEAR(bed->foundation_pa_per_m[1], 18.75e3 / 0.030, 1e-6);
  EXPECT_NEAR(bed->foundation_pa_per_m[2], 25e3 / 0.020, 1e-6);
}

TEST(TissueBed, TissueIsPaintedByDistanceFromALandmark) {
  SkinRegion shin{"shin", NearPoint{"crest", {0.04, 0, 0.1}, 25.0 * mm}, false, {}, {}, Length()};
  shin.by_distance = {{Length(), 4.0 * mm, 2.0}, {25.0 * mm, 19.0 * mm, 1.0}};
  const auto bed = tissue_bed({}, kForearm, {{}, {shin}, 1.0}, line_of_places());
  ASSERT_TRUE(bed.ok());
  EXPECT_NEAR(bed->depth_m[0] * 1e3, 4.0, 1e-9);
  EXPECT_NEAR(bed->depth_m[1] * 1e3, 10.0, 1e-9);
  EXPECT_NEAR(bed->depth_m[2] * 1e3, 16.0, 1e-9);
  EXPECT_NEAR(bed->depth_m[3] * 1e3, 20.0, 1e-9);  // beyond: the row's own
  EXPECT_NEAR(bed->foundation_pa_per_m[1], 1.6 * 25e3 / 0.010, 1e-6);
}

TEST(PlacedRegions, LieNearTheSitesThatTheBodyBrings) {
  Plan plan;
  plan.landmarks = {{"belly", {1, 2, 3}}};
  plan.regions = {{"a", NearPoint{"belly", {1, 2, 3}, 5.0 * mm}, true, {}, {}, Length()},
                  {"b", NearPoint{"crest", Vec3::Zero(), 5.0 * mm}, true, {}, {}, Length()}};
  const std::vector<BonySite> sites{{"crest", {0.04, 0, 0.12}, 8.0 * mm, 3.0 * mm},
                                    {"belly", {7, 7, 7}, 8.0 * mm, 3.0 * mm}};
  const auto placed = placed_regions(plan, sites);
  ASSERT_TRUE(placed.ok());
  EXPECT_EQ(std::get<NearPoint>((*placed)[0].place).point_m, Vec3(1, 2, 3));  // the plan's own comes first
  EXPECT_EQ(std::get<NearPoint>((*placed)[1].place).point_m, Vec3(0.04, 0, 0.12));
  const auto unknown = placed_regions(plan, {});
  ASSERT_FALSE(unknown.ok());
  EXPECT_NE(
      unknown.problem().message.find("'b' lies near 'crest', which neither the plan nor the body has; they "
                                     "have 'belly'"),
      std::string::npos)
      << unknown.problem().message;
}

TEST(TissueBed, ABonySiteHoldsOverARegion) {
  const SkinRegion region{"all", BetweenStations{Length(), 1.0 * metre}, false, 40.0 * mm, {}, Length()};
  const BonySite site{"styloid", {0.04, 0, 0.12}, 8.0 * mm, 3.0 * mm};
  const auto bed = tissue_bed({}, kForearm, {{site}, {region}, 1.0}, line_of_places());
  ASSERT_TRUE(bed.ok());
  EXPECT_NEAR(bed->depth_m[2] * 1e3, 3.0, 1e-9);
  EXPECT_NEAR(bed->depth_m[0] * 1e3, 40.0, 1e-9);
}

TEST(Posture, TenseMuscleIsAsStiffAsTheTablesTenseRow) {
  EXPECT_EQ(*posture_factor(kForearm, std::nullopt), 1.0);
  EXPECT_EQ(*posture_factor(kForearm, Posture::kRelaxed), 1.0);
  EXPECT_NEAR(kForearm.young * *posture_factor(kForearm, Posture::kTense) / kPa, 60.0, 1e-9);
}

TEST(Posture, SkinOverBoneDoesNotStiffenAndContradictionsAreRefused) {
  TissueSite shin = kForearm;
  shin.name = "shin";
  shin.depth = 4.0 * mm;
  EXPECT_EQ(*posture_factor(shin, Posture::kTense), 1.0);
  TissueSite tense = kForearm;
  tense.name = "forearm tense";
  EXPECT_EQ(*posture_factor(tense, Posture::kTense), 1.0);
  EXPECT_FALSE(posture_factor(tense, Posture::kRelaxed).ok());
}

// Two triangles, 10 mm square, 40 mm off the axis.
FlatMesh two_triangles() {
  FlatMesh flat;
  flat.triangles.resize(2, 3);
  flat.triangles << 0, 1, 2, 0, 2, 3;
  return flat;
}
Points3 worn_square() {
  Points3 worn(4, 3);
  worn << 0.04, 0.0, 0.10, 0.04, 0.01, 0.10, 0.04, 0.01, 0.11, 0.04, 0.0, 0.11;
  return worn;
}

TEST(NoGo, ALayoutOnItIsRefusedByName) {
  const auto problem_at = [](const Vec3& point, double radius_mm, bool no_go) {
    const SkinRegion region{"wound", NearPoint{"", point, radius_mm * mm}, no_go, 30.0 * mm, {}, Length()};
    return covered_no_go({region}, {}, two_triangles(), worn_square());
  };
  const auto found = problem_at({0.04, 0.02, 0.105}, 11.0, true);
  ASSERT_TRUE(found);
  EXPECT_NE(found->message.find("The layout lies on 'wound', where nothing may lie"), std::string::npos);
  EXPECT_FALSE(problem_at({0.04, 0.02, 0.105}, 9.0, true));
  EXPECT_FALSE(problem_at({0.04, 0.02, 0.105}, 11.0, false));
  EXPECT_TRUE(problem_at({0.04, 0.007, 0.104}, 1.0, true));  // between the corners
}

}  // namespace
}  // namespace wrapgauge
