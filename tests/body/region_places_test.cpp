#include "model/body/region_places.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

TEST(PlacedRegions, LieNearTheSitesThatTheBodyBrings) {
  const std::vector<Landmark> landmarks{{"belly", {1, 2, 3}}};
  const std::vector<SkinRegion> regions{
      {"a", NearPoint{"belly", {1, 2, 3}, 5.0 * mm}, true, {}, {}, Length()},
      {"b", NearPoint{"crest", Vec3::Zero(), 5.0 * mm}, true, {}, {}, Length()}};
  const std::vector<BonySite> sites{{"crest", {0.04, 0, 0.12}, 8.0 * mm, 3.0 * mm},
                                    {"belly", {7, 7, 7}, 8.0 * mm, 3.0 * mm}};
  const auto placed = placed_regions(regions, {landmarks, {}, sites});
  ASSERT_TRUE(placed.ok());
  EXPECT_EQ(std::get<NearPoint>((*placed)[0].place).point_m, Vec3(1, 2, 3));  // the plan's own comes first
  EXPECT_EQ(std::get<NearPoint>((*placed)[1].place).point_m, Vec3(0.04, 0, 0.12));
  const auto unknown = placed_regions(regions, {landmarks, {}, {}});
  ASSERT_FALSE(unknown.ok());
  EXPECT_NE(
      unknown.problem().message.find("'b' lies near 'crest', which neither the plan nor the body has; they "
                                     "have 'belly'"),
      std::string::npos)
      << unknown.problem().message;
}

}  // namespace
}  // namespace wrapgauge
