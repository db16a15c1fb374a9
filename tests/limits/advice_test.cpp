// One thing to do that fits the place, for every place there is.
#include "model/limits/advice.hpp"

#include <gtest/gtest.h>

#include <set>

namespace wrapgauge {
namespace {

std::vector<TooHard> every_place() {
  std::vector<TooHard> all;
  for (const PressedKind part : kPressedKinds)
    for (const SiteClass row : kSiteClasses)
      for (const std::optional<SiteKind> site : {std::optional<SiteKind>{},
                                                 {SiteKind::kBone},
                                                 {SiteKind::kNerve},
                                                 {SiteKind::kVessel},
                                                 {SiteKind::kTendon}})
        for (const bool fastening : {false, true})
          for (const bool closure : {false, true})
            if (closure || !fastening) all.push_back({part, row, site, fastening, closure});
  return all;
}

bool says(const TooHard& place, const std::string& words) {
  return english(advice(place)).find(words) != std::string::npos;
}

// No other advice exists than these.
TEST(Advice, IsOneOfAFewThingsToDo) {
  std::set<std::string> patterns;
  for (const TooHard& place : every_place()) patterns.insert(advice(place).text);
  EXPECT_EQ(patterns,
            (std::set<std::string>{"Move %1 off %2 or lower the pressure.",
                                   "Move %1 off %2 or fasten it more loosely.", "Fasten it more loosely.",
                                   "Lower the pressure.", "Lower the pressure or widen the strap.",
                                   "Lower the pressure or press on less of the girth.",
                                   "Lower the pressure, or mark where bone and nerves lie.",
                                   "Lower the pressure or make the chamber larger.",
                                   "Lower the pressure or fasten it more loosely."}));
}

TEST(Advice, SpeaksOfThePartThatPressesAndOfNoOther) {
  for (const TooHard& place : every_place()) {
    SCOPED_TRACE(english(advice(place)));
    EXPECT_EQ(says(place, "chamber") && place.part != PressedKind::kChamber, false);
    EXPECT_EQ(says(place, "strap") && place.part != PressedKind::kStrap, false);
    EXPECT_EQ(says(place, "seam") && place.part != PressedKind::kSeam, false);
    EXPECT_FALSE(says(place, "weld"));
    if (place.site) {
      EXPECT_TRUE(says(place, "Move " + english(to_move(place.part))));
    }
  }
}

TEST(Advice, NeverAsksForLessAirWhereTheFasteningAlonePressesTooHard) {
  for (const TooHard& place : every_place())
    if (place.fastening_alone) {
      EXPECT_FALSE(says(place, "ower the pressure")) << english(advice(place));
      EXPECT_TRUE(says(place, "asten it more loosely")) << english(advice(place));
    }
}

TEST(Advice, NeverAsksToFastenWhatHasNoClosure) {
  for (const TooHard& place : every_place())
    if (!place.has_closure) {
      EXPECT_FALSE(says(place, "asten it")) << english(advice(place));
    }
}

}  // namespace
}  // namespace wrapgauge
