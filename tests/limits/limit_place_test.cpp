#include "model/limits/limit_place.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

class LimitPlace : public testing::Test {
 protected:
  void SetUp() override {
    const auto limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json");
    ASSERT_TRUE(limits.ok());
    limits_ = *limits;
    inputs_.bony_sites = {{"styloid", Vec3(0.01, 0.02, 0.03), 12.0 * mm, 4.0 * mm}};
    inputs_.sites_known = true;
    inputs_.part = BodyPart::kForearm;
  }
  std::optional<SiteClass> site_at(const Vec3& point_m, double share_of_girth = 0.0) const {
    const LimitPlaces places(limits_, inputs_, share_of_girth);
    const LimitRow* row = places.at(point_m, 10.0 * cm2).row;
    return row ? std::optional<SiteClass>(row->site) : std::nullopt;
  }
  LimitSet limits_;
  LimitInputs inputs_;
};

TEST_F(LimitPlace, ABonySiteHoldsUpToItsRadiusAndNoFurther) {
  EXPECT_EQ(site_at({0.01, 0.02, 0.03}), SiteClass::kBony);
  for (const Vec3& way : {Vec3(1, 0, 0), Vec3(0, -1, 0), Vec3(0, 0, 1)}) {
    EXPECT_EQ(site_at(inputs_.bony_sites[0].point_m + 11.9e-3 * way), SiteClass::kBony);
    EXPECT_EQ(site_at(inputs_.bony_sites[0].point_m + 12.1e-3 * way), SiteClass::kSoft);
  }
}

TEST_F(LimitPlace, TheRowOfACuffHoldsFromTheShareOfTheGirthThatTheSetNames) {
  const Vec3 elsewhere(0.2, 0.2, 0.2);
  EXPECT_EQ(site_at(elsewhere, limits_.circumferential_share - 1e-9), SiteClass::kSoft);
  EXPECT_EQ(site_at(elsewhere, limits_.circumferential_share), SiteClass::kCircumferential);
}

// So that what is said there names the bone and not the girth.
TEST_F(LimitPlace, OverABonySiteItsRowIsNamedWhereItIsAsStrictAsTheOther) {
  const LimitRow* bony = find_row(limits_, SiteClass::kBony, inputs_.use, 10.0 * cm2);
  ASSERT_TRUE(bony);
  for (LimitRow& row : limits_.rows)
    if (row.site == SiteClass::kCircumferential) row.limit = bony->limit;
  EXPECT_EQ(site_at(inputs_.bony_sites[0].point_m, 0.9), SiteClass::kBony);
  EXPECT_EQ(site_at({0.2, 0.2, 0.2}, 0.9), SiteClass::kCircumferential);
}

TEST_F(LimitPlace, OnABodyWhoseSitesAreNotKnownTheBonyRowHoldsEverywhere) {
  const Vec3 elsewhere(0.2, 0.2, 0.2);
  EXPECT_EQ(site_at(elsewhere), SiteClass::kSoft);
  inputs_.sites_known = false;
  for (const double share_of_girth : {0.0, 0.9})
    EXPECT_EQ(site_at(elsewhere, share_of_girth), SiteClass::kBony);
}

TEST_F(LimitPlace, OnABodyWhosePartIsNotKnownTheBonyRowHoldsEverywhere) {
  inputs_.part.reset();
  EXPECT_EQ(site_at({0.2, 0.2, 0.2}), SiteClass::kBony);
}

// A stricter row of a set of one's own is not lifted by what nobody knows.
TEST_F(LimitPlace, WhatIsNotKnownNeverGivesALaxerRow) {
  for (LimitRow& row : limits_.rows)
    if (row.site == SiteClass::kCircumferential) row.limit = 1.2 * kPa;
  inputs_.sites_known = false;
  EXPECT_EQ(site_at({0.2, 0.2, 0.2}, 0.9), SiteClass::kCircumferential);
}

TEST_F(LimitPlace, OnATestObjectNoRowHolds) {
  inputs_.part = BodyPart::kTestObject;
  for (const bool known : {true, false}) {
    inputs_.sites_known = known;
    EXPECT_EQ(site_at(inputs_.bony_sites[0].point_m, 0.9), std::nullopt);
  }
}

}  // namespace
}  // namespace wrapgauge
