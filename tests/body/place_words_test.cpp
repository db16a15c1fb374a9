#include "model/body/place_words.hpp"

#include <gtest/gtest.h>

#include <Eigen/Geometry>

namespace wrapgauge {
namespace {

// Upright: +z to the trunk, +y to the front, so +x is the person's right.
Body limb(BodyPart part, std::optional<BodySide> side) {
  Body body;
  body.part = part;
  body.side = side;
  body.front = Vec3::UnitY();
  return body;
}

TEST(PlaceWords, OuterIsAwayFromTheOtherLimbOnBothSides) {
  const Body right = limb(BodyPart::kForearm, BodySide::kRight);
  EXPECT_EQ(facing_at(right, 0.0), Facing::kOuter);
  EXPECT_EQ(facing_at(right, 90.0), Facing::kFront);
  EXPECT_EQ(facing_at(right, 180.0), Facing::kInner);
  EXPECT_EQ(facing_at(right, 270.0), Facing::kBack);
  EXPECT_EQ(facing_at(right, 44.0), Facing::kOuter);
  EXPECT_EQ(facing_at(right, 46.0), Facing::kFront);
  const Body left = limb(BodyPart::kForearm, BodySide::kLeft);
  EXPECT_EQ(facing_at(left, 0.0), Facing::kInner);
  EXPECT_EQ(facing_at(left, 180.0), Facing::kOuter);
  EXPECT_EQ(facing_at(left, 90.0), Facing::kFront);
}

TEST(PlaceWords, TheTrunkHasARightAndALeft) {
  EXPECT_EQ(facing_at(limb(BodyPart::kChest, std::nullopt), 0.0), Facing::kRight);
  EXPECT_EQ(facing_at(limb(BodyPart::kHead, std::nullopt), 180.0), Facing::kLeft);
}

TEST(PlaceWords, AreTheSameHoweverTheBodyLies) {
  const Eigen::Quaterniond turn(Eigen::AngleAxisd(1.1, Vec3(1, 2, -1).normalized()));
  Body body = limb(BodyPart::kThigh, BodySide::kLeft);
  Body turned = body;
  turned.axis.direction = turn * body.axis.direction;
  turned.front = Vec3(turn * *body.front);
  for (double angle = 0.0; angle < 360.0; angle += 17.0) {
    const Vec3 outward(std::cos(angle), std::sin(angle), 0.3);
    EXPECT_EQ(facing_of(turned, turn * outward), facing_of(body, outward)) << angle;
  }
}

TEST(PlaceWords, AreNoneWhereTheBodyDoesNotSayEnough) {
  Body body = limb(BodyPart::kForearm, std::nullopt);
  EXPECT_EQ(facing_at(body, 0.0), std::nullopt) << "inner or outer without a side";
  EXPECT_EQ(facing_at(body, 90.0), Facing::kFront);
  EXPECT_EQ(facing_of(body, Vec3::UnitZ()), std::nullopt) << "along the axis";
  body.front.reset();
  EXPECT_EQ(facing_at(body, 90.0), std::nullopt);
}

}  // namespace
}  // namespace wrapgauge
