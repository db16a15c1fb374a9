#include "model/bench/readings_sheet.hpp"

#include <gtest/gtest.h>

#include "tests/bench_readings/read_pad.hpp"

namespace wrapgauge {
namespace {

class ReadingsSheetTyped : public testing::Test {
 protected:
  std::string block() const { return "layout_hash," + layout_hash(layout_) + "\nremark,\"a, b\"\n"; }
  ReadingsSheet sheet(const std::string& table) const {
    auto made = ReadingsSheet::of(block() + table, "readings.csv", layout_);
    EXPECT_TRUE(made) << made.problem().message;
    return std::move(made).value();
  }
  Layout layout_ = read_pad();
};

constexpr const char* kUnreadFill =
    "id,kind,where,filled_ml,gauge_kpa,predicted\nf1,fill,hose,20,,1.50 kPa (11.3 mmHg)\n";

TEST_F(ReadingsSheetTyped, ARowMayWaitToBeRead) {
  const ReadingsSheet made = sheet(kUnreadFill);
  EXPECT_FALSE(made.read_value(0));
  EXPECT_NEAR(*made.predicted_value(0), 1.5, 1e-9);
  EXPECT_EQ(made.read_unit(0), "kPa");
  EXPECT_TRUE(without_unread(made.readings()).rows.empty());
}

TEST_F(ReadingsSheetTyped, AFitIsNotGivenWhatWasNotRead) {
  const auto refused = readings_of(block() + kUnreadFill, "readings.csv", layout_, UnreadRows::kRefused);
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.problem().message.find("is empty"), std::string::npos) << refused.problem().message;
}

TEST_F(ReadingsSheetTyped, WhatIsTypedChangesItsCellAlone) {
  const ReadingsSheet before = sheet(kUnreadFill);
  const auto after = before.with_read(0, "1,62", layout_);
  ASSERT_TRUE(after) << after.problem().message;
  EXPECT_NEAR(*after->read_value(0), 1.62, 1e-12);
  EXPECT_EQ(after->bytes(), block() +
                                "id,kind,where,filled_ml,gauge_kpa,predicted\n"
                                "f1,fill,hose,20,1.62,1.50 kPa (11.3 mmHg)\n");
  EXPECT_EQ(after->with_read(0, "", layout_)->bytes(), before.bytes());
}

TEST_F(ReadingsSheetTyped, TheUnitIsThatOfTheColumnThatIsThere) {
  const ReadingsSheet made = sheet("id,kind,where,filled_ml,gauge_mmhg\nf1,fill,hose,20,12\n");
  EXPECT_EQ(made.read_unit(0), "mmHg");
  EXPECT_NEAR(*made.read_value(0), 12.0, 1e-9);
  EXPECT_NEAR(read_si(made.with_read(0, "15", layout_)->readings().rows[0]), 15.0 * mmHg.si(), 1e-9);
}

TEST_F(ReadingsSheetTyped, WordsForANumberAndNegativeOnesAreRefused) {
  const ReadingsSheet made = sheet(kUnreadFill);
  for (const char* typed : {"much", "-2", "0", "1.2.3"})
    EXPECT_FALSE(made.with_read(0, typed, layout_)) << typed;
}

TEST_F(ReadingsSheetTyped, AKeyOfTheBlockIsChangedWhereItStandsOrAdded) {
  const ReadingsSheet made = sheet(kUnreadFill);
  EXPECT_EQ(made.key_value("remark"), "a, b");
  const auto said = made.with_key("error_percent fill", "2", layout_);
  ASSERT_TRUE(said) << said.problem().message;
  EXPECT_DOUBLE_EQ(said->readings().rows[0].error, 0.02);
  EXPECT_EQ(said->with_key("remark", "c", layout_)->key_value("remark"), "c");
  EXPECT_FALSE(made.with_key("error_percent fill", "much", layout_));
}

}  // namespace
}  // namespace wrapgauge
