#include "model/body/part_rules.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

std::string refusal(std::optional<BodyPart> own, std::optional<BodyPart> said) {
  const auto part = agreed_part("limb", own, said);
  return part ? "" : part.problem().message;
}

TEST(PartRules, EveryPartIsFoundByTheNameItHas) {
  for (const BodyPart part : kBodyParts) EXPECT_EQ(body_part_from_name(body_part_name(part)), part);
  EXPECT_EQ(body_part_from_name("tail"), std::nullopt);
  EXPECT_EQ(body_part_from_name("Forearm"), std::nullopt);
}

TEST(PartRules, WhatThePlanSaysCountsAndWhatTheBodySaysHoldsWithoutIt) {
  EXPECT_EQ(*agreed_part("limb", std::nullopt, std::nullopt), std::nullopt);
  EXPECT_EQ(*agreed_part("limb", BodyPart::kWrist, std::nullopt), BodyPart::kWrist);
  EXPECT_EQ(*agreed_part("limb", std::nullopt, BodyPart::kKnee), BodyPart::kKnee);
  EXPECT_EQ(*agreed_part("limb", BodyPart::kAbdomen, BodyPart::kChest), BodyPart::kChest);
  EXPECT_EQ(*agreed_part("limb", BodyPart::kForearm, BodyPart::kTestObject), BodyPart::kTestObject);
}

TEST(PartRules, NeckAndFaceAreRefusedHoweverTheyComeIn) {
  for (const BodyPart part : {BodyPart::kNeck, BodyPart::kFace}) {
    EXPECT_NE(refusal(std::nullopt, part).find("no setting lifts that"), std::string::npos);
    EXPECT_NE(refusal(part, std::nullopt).find("no setting lifts that"), std::string::npos);
    EXPECT_EQ(body_part_names().find(body_part_name(part)), std::string::npos) << "offered and then refused";
  }
  for (const BodyPart part : kBodyParts)
    EXPECT_EQ(refusal(std::nullopt, part).empty(), part != BodyPart::kNeck && part != BodyPart::kFace)
        << body_part_name(part);
}

TEST(PartRules, AContradictionNamesWhatTheBodyMayBe) {
  EXPECT_EQ(
      refusal(BodyPart::kForearm, BodyPart::kKnee),
      "the plan calls the body 'limb' a part it is not: 'knee'; it may be forearm, test object: correct "
      "body.part or take another body.");
  EXPECT_NE(refusal(BodyPart::kAbdomen, BodyPart::kHip), "");
  EXPECT_NE(refusal(BodyPart::kTestObject, BodyPart::kForearm), "") << "a dummy becomes a person";
}

// Else a band round the chest would be let off by calling the chest a back.
TEST(PartRules, NoPartOfTheTrunkIsLaxerThanAnotherThatFitsTheSameBody) {
  for (const BodyPart own : kBodyParts)
    for (const BodyPart said : parts_that_fit(own))
      if (is_worn(said)) {
        EXPECT_EQ(needs_clearance_all_round(said), needs_clearance_all_round(own))
            << body_part_name(own) << " called " << body_part_name(said);
      }
}

TEST(PartRules, AMissingPartIsAskedForAndATestObjectHasNoCeiling) {
  ASSERT_TRUE(part_missing("limb", std::nullopt));
  EXPECT_NE(part_missing("limb", std::nullopt)->message.find("finger, hand, wrist"), std::string::npos);
  EXPECT_FALSE(part_missing("limb", BodyPart::kFoot));
  EXPECT_TRUE(not_of_a_test_object(BodyPart::kTestObject, Phrase::worded("ceiling")));
  EXPECT_FALSE(not_of_a_test_object(BodyPart::kFoot, Phrase::worded("ceiling")));
}

TEST(PartRules, TissueIsConfirmedOnlyForThePartItWasChosenFor) {
  EXPECT_TRUE(tissue_was_chosen_for(BodyPart::kForearm, "forearm tense"));
  EXPECT_FALSE(tissue_was_chosen_for(BodyPart::kWrist, "forearm tense"));
  EXPECT_FALSE(tissue_was_chosen_for(BodyPart::kFoot, "shin"));
  EXPECT_FALSE(tissue_was_chosen_for(std::nullopt, "shin"));
}

}  // namespace
}  // namespace wrapgauge
