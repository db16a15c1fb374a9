#include "model/limits/limit_set.hpp"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <string>

namespace wrapgauge {
namespace {

const std::filesystem::path kTable = WRAPGAUGE_SOURCE_DIR "/resources/limits.json";

nlohmann::json table() {
  std::ifstream in(kTable);
  return nlohmann::json::parse(in);
}

std::string read_message(const nlohmann::json& json) {
  const auto file =
      std::filesystem::path(testing::TempDir()) / ("limits-" + std::to_string(::getpid()) + ".json");
  std::ofstream(file) << json.dump();
  const auto limits = read_limit_set(file);
  std::filesystem::remove(file);
  return limits ? "" : limits.problem().message;
}

// Default rows, judgement: kPa warn and limit, each below the lowest figure it leans on (docs/07-limits.md).
TEST(LimitTable, HoldsTheDefaultRows) {
  const auto limits = read_limit_set(kTable);
  ASSERT_TRUE(limits.ok()) << limits.problem().message;
  struct Row {
    SiteClass site;
    UsePattern use;
    double warn_kpa, limit_kpa;
  };
  using enum SiteClass;
  using enum UsePattern;
  for (const Row& expected : {Row{kSoft, kSustained, 2.0, 3.0}, Row{kBony, kSustained, 1.0, 1.5},
                              Row{kCircumferential, kSustained, 1.3, 2.0}, Row{kSoft, kShortHold, 3.5, 5.3},
                              Row{kBony, kShortHold, 1.8, 2.7}, Row{kCircumferential, kShortHold, 1.8, 2.7},
                              Row{kSoft, kPulse, 5.0, 7.5}}) {
    const LimitRow* row = find_row(*limits, expected.site, expected.use, 3.0 * cm2);
    ASSERT_NE(row, nullptr);
    EXPECT_DOUBLE_EQ(row->warn / kPa, expected.warn_kpa);
    EXPECT_DOUBLE_EQ(row->limit / kPa, expected.limit_kpa);
    EXPECT_EQ(row->status, "judgement");
  }
  EXPECT_DOUBLE_EQ(limits->model_factor, 1.5);
  EXPECT_DOUBLE_EQ(limits->tourniquet_warn / kPa, 4.0);
  EXPECT_DOUBLE_EQ(limits->tourniquet_stop / kPa, 5.3);
  EXPECT_DOUBLE_EQ(limits->strain_warn, 0.2);
  EXPECT_DOUBLE_EQ(limits->strain_limit, 0.3);
  EXPECT_DOUBLE_EQ(limits->relief.times_limit, 1.25);
  EXPECT_DOUBLE_EQ(limits->relief.cuff / kPa, 5.3);
  EXPECT_DOUBLE_EQ(limits->relief.pad / kPa, 10.0);
  EXPECT_LE(limits->circumferential_share, 2.0 / 3.0);
}

TEST(LimitTable, NeverPromisesThatSomethingIsHarmless) {
  EXPECT_EQ(table().dump().find("safe"), std::string::npos);
}

TEST(LimitRow, OfAPulseHoldsOnlyForASmallSoftPad) {
  const auto limits = read_limit_set(kTable);
  ASSERT_TRUE(limits.ok());
  using enum SiteClass;
  EXPECT_EQ(find_row(*limits, kSoft, UsePattern::kPulse, 5.0 * cm2)->use, UsePattern::kPulse);
  EXPECT_EQ(find_row(*limits, kSoft, UsePattern::kPulse, 5.1 * cm2)->use, UsePattern::kShortHold);
  EXPECT_EQ(find_row(*limits, kBony, UsePattern::kPulse, 1.0 * cm2)->use, UsePattern::kShortHold);
  EXPECT_EQ(find_row(*limits, kCircumferential, UsePattern::kPulse, 1.0 * cm2)->use, UsePattern::kShortHold);
}

// Hold, off and session of each use; the longest time on follows.
TEST(LimitRow, KnowsItsTimes) {
  const auto limits = read_limit_set(kTable);
  ASSERT_TRUE(limits.ok());
  const auto times = [&](SiteClass site, UsePattern use) {
    return find_row(*limits, site, use, 1.0 * cm2)->times;
  };
  using enum SiteClass;
  using enum UsePattern;
  EXPECT_NEAR(times(kSoft, kSustained).longest_on() / minute, 100.0,
              1e-9);                                        // 10 min off in every hour of 2 h
  for (const SiteClass site : {kBony, kCircumferential}) {  // 10 min off after 30, in 1 h
    EXPECT_NEAR(times(site, kSustained).longest_on() / minute, 45.0, 0.01);
    EXPECT_NEAR(times(site, kSustained).first_check / minute, 10.0, 1e-9);
    EXPECT_NEAR(*times(site, kSustained).check_every / minute, 20.0, 1e-9);
    EXPECT_NEAR(times(site, kSustained).longest_hold / minute, 30.0, 1e-9);
  }
  EXPECT_NEAR(times(kSoft, kSustained).first_check / minute, 15.0, 1e-9);
  EXPECT_NEAR(*times(kSoft, kSustained).check_every / minute, 30.0, 1e-9);
  EXPECT_NEAR(times(kSoft, kShortHold).longest_on() / second, 200.0, 1e-9);  // a third of 10 min
  EXPECT_NEAR(times(kSoft, kPulse).largest_duty(), 0.25, 1e-12);
  EXPECT_EQ(english(times_words(times(kSoft, kShortHold))),
            "look at the skin after 10 min, hold for 60 s at most, then off for at least 2 times as long, no "
            "more than 10 min in a session");
}

// A place let go is one pressed below the lowest warning of a session.
TEST(LimitTable, CountsAPlaceAsRestedBelowTheStrictestSustainedWarning) {
  const auto limits = read_limit_set(kTable);
  ASSERT_TRUE(limits.ok());
  Pressure strictest(1e9);
  for (const LimitRow& row : limits->rows)
    if (row.use == UsePattern::kSustained) strictest = std::min(strictest, row.warn);
  EXPECT_EQ(limits->rest.below, strictest);
}

// A stricter place never gets a higher pressure, a longer time or a later look than a soft one.
TEST(LimitTable, GivesNoStricterPlaceLaxerTimesThanASoftOne) {
  const auto limits = read_limit_set(kTable);
  ASSERT_TRUE(limits.ok());
  for (const UsePattern use : {UsePattern::kSustained, UsePattern::kShortHold}) {
    const LimitRow& soft = *find_row(*limits, SiteClass::kSoft, use, Area());
    for (const SiteClass site : {SiteClass::kBony, SiteClass::kCircumferential}) {
      const LimitRow& row = *find_row(*limits, site, use, Area());
      SCOPED_TRACE(std::string(site_name(site)) + ", " + std::string(use_name(use)));
      EXPECT_LT(row.warn, soft.warn);
      EXPECT_LT(row.limit, soft.limit);
      EXPECT_LE(row.times.first_check, soft.times.first_check);
      EXPECT_LE(row.times.check_every.value_or(Time(1e9)), soft.times.check_every.value_or(Time(1e9)));
      EXPECT_LE(row.times.longest_hold, soft.times.longest_hold);
      EXPECT_GE(row.times.off_over_on, soft.times.off_over_on);
      EXPECT_LE(row.times.longest_session, soft.times.longest_session);
    }
  }
}

TEST(UseName, GoesBothWays) {
  for (UsePattern use : {UsePattern::kSustained, UsePattern::kShortHold, UsePattern::kPulse})
    EXPECT_EQ(use_from_name(use_name(use)), use);
  EXPECT_FALSE(use_from_name("forever"));
}

TEST(LimitReader, NamesTheRowTheFieldAndTheNumber) {
  const auto expect = [](auto change, const std::string& part) {
    nlohmann::json json = table();
    change(json);
    const std::string message = read_message(json);
    EXPECT_NE(message.find(part), std::string::npos) << message;
  };
  expect([](auto& j) { j["rows"][0]["warn_kpa"] = 5; }, "row 1: warn_kpa is 5 and above limit_kpa, 3");
  expect([](auto& j) { j["rows"][1]["limit_kpa"] = 0; }, "row 2: limit_kpa is 0 kPa");
  expect([](auto& j) { j["rows"][2]["site"] = "knee"; }, "row 3: site is \"knee\"");
  expect([](auto& j) { j["rows"][2]["use"] = "always"; }, "row 3: use is \"always\"");
  expect([](auto& j) { j["rows"][2]["sourse"] = "x"; }, "the key \"sourse\" is not known");
  expect([](auto& j) { j["rows"].push_back(j["rows"][0]); }, "row 8: soft, sustained stands twice");
  expect([](auto& j) { j["rows"].erase(1); }, "has no row for bony, sustained");
  expect([](auto& j) { j["model_factor"] = 0.5; }, "model_factor is 0.5");
  expect([](auto& j) { j["tourniquet"]["stop_kpa"] = 3; }, "tourniquet: warn_kpa is 4 and above stop_kpa, 3");
  expect([](auto& j) { j["tissue_strain"]["limit"] = 2; }, "tissue_strain: limit is 2");
  expect([](auto& j) { j["sheet_stretch"].erase("source"); }, "sheet_stretch: \"source\" is missing");
  expect([](auto& j) { j["rows"][3]["times"]["hold_s"] = 0; }, "row 4, times: hold_s is 0 s");
  expect([](auto& j) { j["rows"][3].erase("times"); }, "row 4: \"times\" is missing");
  expect([](auto& j) { j["heat"]["hot_c"] = 45; }, "heat: hot_c is 45 and above hot_stop_c, 41");
  expect([](auto& j) { j["heat"]["burn"][1]["minutes"] = 1; }, "burn thresholds must stand in order");
  expect([](auto& j) { j.erase("relief"); }, "\"relief\" is missing");
  expect([](auto& j) { j.erase("wrapgauge-limits"); }, "not the kind of file");
}

}  // namespace
}  // namespace wrapgauge
