#include "app/desk/session/skin_place.hpp"

#include "tests/desk_session/small_plan.hpp"

namespace wrapgauge {
namespace {

using Kind = SkinPlace::Kind;

TEST(SkinPlace, EverythingThatCanBeAddedMakesAPlanThatCanBeSavedAndReadAgain) {
  const QTemporaryDir folder;
  const std::filesystem::path file = std::filesystem::path(folder.path().toStdString()) / "plan.json";
  Plan plan = small_plan();
  for (const NewSkinPlace what : {NewSkinPlace::kBonySite, NewSkinPlace::kLandmark, NewSkinPlace::kNoGo,
                                  NewSkinPlace::kTissueNear, NewSkinPlace::kTissueBand})
    plan = with_new_place(plan, what, {0.04, 0.0, 0.1});
  ASSERT_TRUE(write_plan(plan, file).ok());
  const auto again = read_plan(file);
  ASSERT_TRUE(again.ok()) << again.problem().message;
  EXPECT_TRUE(changed_parts(plan, *again).empty());
  EXPECT_EQ(skin_places(*again).size(), 5U);
  EXPECT_TRUE(again->regions[0].no_go);
}

TEST(SkinPlace, ARegionFollowsTheLandmarkItLiesNearThroughMoveRenameAndRemoval) {
  Plan plan = with_new_place(small_plan(), NewSkinPlace::kLandmark, {0.04, 0.0, 0.1});
  plan = with_new_place(plan, NewSkinPlace::kNoGo, {0.0, 0.04, 0.05});
  const auto near = [](const Plan& of) { return std::get<NearPoint>(of.regions[0].place); };
  std::get<NearPoint>(plan.regions[0].place).landmark = plan.landmarks[0].name;
  plan = with_places_settled(plan);
  EXPECT_EQ(near(plan).point_m, Vec3(0.04, 0.0, 0.1));
  EXPECT_FALSE(skin_place_point_m(plan, {Kind::kRegion, 0}));

  plan = with_place_at(plan, {Kind::kLandmark, 0}, {0.0, 0.04, 0.12});
  EXPECT_EQ(near(plan).point_m, Vec3(0.0, 0.04, 0.12));
  plan = with_place_name(plan, {Kind::kLandmark, 0}, "old scar").value();
  EXPECT_EQ(near(plan).landmark, "old scar");
  plan = without_place(plan, {Kind::kLandmark, 0});
  EXPECT_EQ(near(plan).landmark, "");
  EXPECT_EQ(near(plan).point_m, Vec3(0.0, 0.04, 0.12));
}

TEST(SkinPlace, TwoPlacesNeverShareAName) {
  Plan plan = with_new_place(small_plan(), NewSkinPlace::kBonySite, {0.04, 0.0, 0.1});
  plan = with_new_place(plan, NewSkinPlace::kBonySite, {0.04, 0.0, 0.1});
  EXPECT_NE(plan.bony_sites[0].name, plan.bony_sites[1].name);
  EXPECT_FALSE(with_place_name(plan, {Kind::kBonySite, 1}, plan.bony_sites[0].name));
  EXPECT_FALSE(with_place_name(plan, {Kind::kBonySite, 1}, ""));
}

TEST(SkinPlace, ValuesAtDistancesTakeTheRadiusAndTheSingleValues) {
  Plan plan = with_new_place(small_plan(), NewSkinPlace::kTissueNear, {0.04, 0.0, 0.1});
  SkinRegion& region = plan.regions[0];
  region.by_distance = {{0.0 * mm, 4.0 * mm, {}}, {25.0 * mm, 12.0 * mm, {}}};
  plan = with_places_settled(plan);
  EXPECT_EQ(std::get<NearPoint>(plan.regions[0].place).radius, 25.0 * mm);
  EXPECT_FALSE(plan.regions[0].stiffness_factor);
  plan.regions[0].by_distance.clear();
  plan = with_places_settled(plan);
  EXPECT_EQ(plan.regions[0].stiffness_factor, 1.0);  // it would say nothing otherwise
}

}  // namespace
}  // namespace wrapgauge
