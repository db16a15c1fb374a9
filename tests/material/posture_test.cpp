#include "model/material/posture.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

const TissueSite kForearm{"forearm relaxed", 25.0 * kPa, 0.0, 20.0 * mm, "table", "judgement"};

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

}  // namespace
}  // namespace wrapgauge
