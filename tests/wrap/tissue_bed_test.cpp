#include "model/wrap/tissue_bed.hpp"

#include <gtest/gtest.h>

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

// Deep and thin tissue, and a region that somebody measured.
TEST(TissueBed, IsNoDeeperThanABoneThatMayLieAnywhere) {
  const SkinRegion measured{"belly", NearPoint{"", {0.04, 0, 0.1}, 5.0 * mm}, false, 40.0 * mm, {}, Length()};
  TissueChanges changes{.sites = {}, .regions = {measured}, .bone_anywhere = 3.0 * mm};
  const auto bed = tissue_bed({}, kForearm, changes, line_of_places());
  ASSERT_TRUE(bed.ok());
  EXPECT_NEAR(bed->depth_m[0] * 1e3, 40.0, 1e-9);
  EXPECT_NEAR(bed->depth_m[3] * 1e3, 3.0, 1e-9);
  EXPECT_NEAR(bed->foundation_pa_per_m[3], 25e3 / 0.003, 1e-6);
  changes.bone_anywhere = 30.0 * mm;
  EXPECT_NEAR(tissue_bed({}, kForearm, changes, line_of_places())->depth_m[3] * 1e3, 20.0, 1e-9);
}

TEST(TissueBed, ABonySiteHoldsOverARegion) {
  const SkinRegion region{"all", BetweenStations{Length(), 1.0 * metre}, false, 40.0 * mm, {}, Length()};
  const BonySite site{"styloid", {0.04, 0, 0.12}, 8.0 * mm, 3.0 * mm};
  const auto bed = tissue_bed({}, kForearm, {{site}, {region}, 1.0}, line_of_places());
  ASSERT_TRUE(bed.ok());
  EXPECT_NEAR(bed->depth_m[2] * 1e3, 3.0, 1e-9);
  EXPECT_NEAR(bed->depth_m[0] * 1e3, 40.0, 1e-9);
}

// Its depth holds up to its radius of 8 mm, fades over half a radius more and is gone beyond.
TEST(TissueBed, ABonySiteHoldsWithinItsRadiusAndFadesOutBeyondIt) {
  const BonySite site{"styloid", {0.04, 0, 0.12}, 8.0 * mm, 3.0 * mm};
  Points3 worn(4, 3);
  worn << 0.04, 0, 0.12, 0.04, 0, 0.1275, 0.04, 0, 0.130, 0.04, 0, 0.1325;
  const auto bed = tissue_bed({}, kForearm, {{site}, {}, 1.0}, worn);
  ASSERT_TRUE(bed.ok());
  EXPECT_NEAR(bed->depth_m[0] * 1e3, 3.0, 1e-9);
  EXPECT_NEAR(bed->depth_m[1] * 1e3, 3.0, 1e-9);
  EXPECT_NEAR(bed->depth_m[2] * 1e3, 11.5, 1e-9);  // half-way
  EXPECT_NEAR(bed->depth_m[3] * 1e3, 20.0, 1e-9);
}

}  // namespace
}  // namespace wrapgauge
