#include "model/body/length_unit.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

TEST(LengthUnit, IsGuessedForEveryUsualLimb) {
  struct Limb {
    double length_mm, width_mm;
  };
  for (const Limb& limb : {Limb{220, 88}, Limb{168, 63}, Limb{371, 131}, Limb{280, 182}})
    for (const LengthUnit unit :
         {LengthUnit::kMillimetre, LengthUnit::kCentimetre, LengthUnit::kMetre, LengthUnit::kInch}) {
      const double scale = length_of(unit) / mm;
      const auto choice = choose_unit({limb.length_mm / scale, limb.width_mm / scale}, std::nullopt);
      ASSERT_TRUE(choice.ok());
      EXPECT_EQ(choice->unit, unit) << limb.length_mm << " mm in " << unit_name(unit);
      EXPECT_TRUE(choice->guessed);
      EXPECT_NE(english(choice->sentence).find(unit_name(unit)), std::string::npos);
    }
}

TEST(LengthUnit, NamesTheOtherUnitWhenTheGuessIsClose) {
  // A trunk drawn in inches is as long as a child's forearm drawn in centimetres.
  const auto choice = choose_unit({13.9, 13.5}, std::nullopt);
  ASSERT_TRUE(choice.ok());
  EXPECT_NE(english(choice->sentence).find("cm (139 mm long)"), std::string::npos)
      << english(choice->sentence);
  EXPECT_NE(english(choice->sentence).find("in (353 mm long)"), std::string::npos)
      << english(choice->sentence);
}

TEST(LengthUnit, IsTakenAsStatedWhenTheSizeIsPossible) {
  const auto choice = choose_unit({22.0, 8.8}, LengthUnit::kInch);
  ASSERT_TRUE(choice.ok());
  EXPECT_EQ(choice->unit, LengthUnit::kInch);
  EXPECT_FALSE(choice->guessed);
  EXPECT_NE(english(choice->sentence).find("could also be cm"), std::string::npos)
      << english(choice->sentence);
}

TEST(LengthUnit, RefusesALimbOf300MetresAndNamesTheLikelyUnit) {
  const auto choice = choose_unit({300.0, 90.0}, LengthUnit::kMetre);
  ASSERT_FALSE(choice.ok());
  EXPECT_NE(choice.problem().message.find("300 m long"), std::string::npos) << choice.problem().message;
  EXPECT_NE(choice.problem().message.find("likely unit is mm"), std::string::npos)
      << choice.problem().message;
}

TEST(LengthUnit, RefusesALimbOfAThirdOfAMillimetreAndNamesTheLikelyUnit) {
  const auto choice = choose_unit({0.3, 0.09}, LengthUnit::kMillimetre);
  ASSERT_FALSE(choice.ok());
  EXPECT_NE(choice.problem().message.find("likely unit is m "), std::string::npos)
      << choice.problem().message;
}

TEST(LengthUnit, NamesUnitsThatAreNotRead) {
  const auto choice = choose_unit({220431.0, 88000.0}, std::nullopt);
  ASSERT_FALSE(choice.ok());
  EXPECT_NE(choice.problem().message.find("micrometre"), std::string::npos) << choice.problem().message;
  EXPECT_FALSE(choose_unit({0.0, 0.0}, std::nullopt).ok());
  EXPECT_FALSE(choose_unit({1e12, 1e12}, std::nullopt).ok());
}

}  // namespace
}  // namespace wrapgauge
