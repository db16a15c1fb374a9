#include "model/limits/own_limits.hpp"

#include <gtest/gtest.h>

#include "model/limits/shipped_limits.hpp"

namespace wrapgauge {
namespace {

class OwnLimits : public testing::Test {
 protected:
  void SetUp() override {
    const auto limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json");
    const auto comparisons = read_comparisons(WRAPGAUGE_SOURCE_DIR "/resources/comparisons.json");
    ASSERT_TRUE(limits.ok() && comparisons.ok());
    shipped_ = own_ = *limits;
    comparisons_ = *comparisons;
    own_.name = "ours";
  }
  std::string refusal(const std::optional<std::string>& reason = std::nullopt) const {
    const auto held = own_limit_set(own_, shipped_, comparisons_, reason);
    return held ? "" : held.problem().message;
  }
  LimitRow& row(SiteClass site, UsePattern use) {
    for (LimitRow& row : own_.rows)
      if (row.site == site && row.use == use) return row;
    ADD_FAILURE();
    return own_.rows[0];
  }
  LimitSet shipped_, own_;
  Comparisons comparisons_;
};

TEST_F(OwnLimits, AsStrictOrStricterAreTakenAsTheyAre) {
  EXPECT_EQ(refusal(), "");
  for (LimitRow& row : own_.rows) row.limit = row.limit * 0.9, row.warn = row.warn * 0.9;
  own_.model_factor = 2.0;
  own_.heat.cold_c = 18.0;
  EXPECT_EQ(refusal(), "");
}

TEST_F(OwnLimits, LaxerOnesAreRefusedWithBothNumbers) {
  row(SiteClass::kSoft, UsePattern::kSustained).limit = 5.0 * kPa;
  own_.model_factor = 1.2;
  EXPECT_EQ(
      refusal(),
      "The limit set 'ours' is laxer than the program's: row soft, sustained, limit is 5.0 kPa (38 mmHg) "
      "instead of 3.0 kPa (23 mmHg) (and 1 more). Make it as strict or stricter, or write the reason into "
      "the plan as limits.override_reason.");
}

TEST_F(OwnLimits, EveryLaxerNumberIsFound) {
  const auto laxer = [&](auto change) {
    own_ = shipped_;
    change(own_);
    return laxer_parts(own_, shipped_).size();
  };
  EXPECT_EQ(laxer([](LimitSet&) {}), 0u);
  EXPECT_EQ(laxer([](LimitSet& s) { s.rows[0].times.longest_session = 180.0 * minute; }), 1u);
  EXPECT_EQ(laxer([](LimitSet& s) { s.rows[0].times.check_every.reset(); }), 1u);
  EXPECT_EQ(laxer([](LimitSet& s) { s.rows[0].times.off_over_on = 0.1; }), 1u);
  EXPECT_EQ(laxer([](LimitSet& s) { s.circumferential_share = 0.8; }), 1u);
  EXPECT_EQ(laxer([](LimitSet& s) { s.tourniquet_stop = 6.0 * kPa; }), 1u);
  EXPECT_EQ(laxer([](LimitSet& s) { s.strain_limit = 0.4; }), 1u);
  EXPECT_EQ(laxer([](LimitSet& s) { s.share_of_break_limit = 0.5; }), 1u);
  EXPECT_EQ(laxer([](LimitSet& s) { s.rest.after_session = 10.0 * minute; }), 1u);
  EXPECT_EQ(laxer([](LimitSet& s) { s.relief.cuff = 8.0 * kPa; }), 1u);
  EXPECT_EQ(laxer([](LimitSet& s) { s.release.within = 10.0 * second; }), 1u);
  EXPECT_EQ(laxer([](LimitSet& s) { s.heat.hot_stop_c = 43.0; }), 1u);
  // Without its area the pulse row would hold for large pads too, where the 60 s row holds.
  EXPECT_GE(laxer([](LimitSet& s) { s.rows[6].largest_area.reset(); }), 1u);
  // A pulse row where the program has none is held against the 60 s row.
  EXPECT_GE(laxer([](LimitSet& s) {
              s.rows.push_back(s.rows[6]);
              s.rows.back().site = SiteClass::kBony;
            }),
            1u);
}

TEST_F(OwnLimits, WithAReasonLaxerOnesHoldAndCarryIt) {
  row(SiteClass::kBony, UsePattern::kSustained).limit = 2.5 * kPa;
  const auto held = own_limit_set(own_, shipped_, comparisons_, "approved by the ward, protocol 7");
  ASSERT_TRUE(held.ok());
  ASSERT_TRUE(held->override_words);
  const std::string overridden = english(*held->override_words);
  EXPECT_NE(overridden.find("row bony, sustained, limit is 2.5 kPa (19 mmHg) instead of 1.5 kPa"),
            std::string::npos);
  EXPECT_NE(overridden.find("approved by the ward, protocol 7"), std::string::npos);
}

TEST_F(OwnLimits, AReasonOfSpacesIsNone) {
  row(SiteClass::kBony, UsePattern::kSustained).limit = 2.5 * kPa;
  EXPECT_NE(refusal(" \t\n ").find("write the reason into the plan"), std::string::npos);
}

// Whatever differs is named: fewer numbers, more of them, or words alone.
TEST_F(OwnLimits, AreNamedWheneverTheyAreNotTheShippedOnes) {
  const auto named = [&](const std::optional<std::string>& reason = std::nullopt) {
    const auto held = own_limit_set(own_, shipped_, comparisons_, reason);
    return held.ok() ? english(held->differs_words).value_or("") : held.problem().message;
  };
  own_ = shipped_;
  EXPECT_EQ(named(), "");
  own_.rows[0].source = "another";
  EXPECT_EQ(named(), "The limits are those of the set '" + own_.name +
                         "', not the program's own: 0 of their numbers are stricter, 0 laxer.");
  own_ = shipped_;
  own_.rows[0].limit = 2.5 * kPa;
  EXPECT_NE(named().find("1 of their numbers are stricter, 0 laxer"), std::string::npos) << named();
  own_.rows[0].limit = 3.5 * kPa;
  EXPECT_NE(named("a reason").find("0 of their numbers are stricter, 1 laxer"), std::string::npos);
}

TEST_F(OwnLimits, AreHeldAgainstTheSetThatTheProgramWasBuiltWith) {
  const auto built_in = shipped_limit_set();
  ASSERT_TRUE(built_in.ok()) << built_in.problem().message;
  EXPECT_TRUE(laxer_parts(*built_in, shipped_).empty() && laxer_parts(shipped_, *built_in).empty());
  EXPECT_EQ(built_in->name, shipped_.name);
  ASSERT_TRUE(shipped_comparisons().ok());
  EXPECT_EQ(shipped_comparisons()->refused.size(), comparisons_.refused.size());
}

TEST_F(OwnLimits, AReasonThatOverridesNothingIsRefused) {
  EXPECT_NE(refusal("just in case").find("nowhere laxer"), std::string::npos);
}

// Pain thresholds of a short push say nothing about a pressure that is held (ISO/TS 15066:2016, from memory).
TEST_F(OwnLimits, TakenFromAPainTableAreRefusedWhateverTheReason) {
  row(SiteClass::kSoft, UsePattern::kSustained).source = "ISO/ts 15066:2016, table A.2";
  EXPECT_NE(refusal("we like it").find("is no limit for held pressure"), std::string::npos);
  row(SiteClass::kSoft, UsePattern::kSustained).source = "40 % of arterial occlusion pressure";
  EXPECT_NE(refusal("we like it").find("flow-restricted exercise"), std::string::npos);
}

// RAL-GZ 387 and the British Standard, read on secondary pages: 20 mmHg is class 1 in one and 2 in the other.
TEST_F(OwnLimits, CompressionClassesDifferByCountry) {
  const std::string words = english(classes_words(comparisons_, 20.0 * mmHg)).value_or("");
  EXPECT_NE(words.find("class 1 of RAL-GZ 387 (18 to 21 mmHg"), std::string::npos) << words;
  EXPECT_NE(words.find("class 2 of British Standard (18 to 24 mmHg"), std::string::npos) << words;
  EXPECT_NE(english(classes_words(comparisons_, 60.0 * mmHg)).value_or("").find("49 and more mmHg"),
            std::string::npos);
  EXPECT_FALSE(classes_words(comparisons_, 5.0 * mmHg));
}

}  // namespace
}  // namespace wrapgauge
