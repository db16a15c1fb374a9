#include "model/bench/readings_file.hpp"

#include <gtest/gtest.h>

#include "model/core/file.hpp"
#include "tests/bench_readings/read_pad.hpp"

namespace wrapgauge {
namespace {

class ReadingsFile : public testing::Test {
 protected:
  Result<Readings> read(const std::string& table, std::string block = "") const {
    if (block.empty()) block = "layout_hash," + layout_hash(layout_) + "\npart,forearm\n";
    const auto file = std::filesystem::path(testing::TempDir()) / "readings.csv";
    EXPECT_TRUE(write_file_atomically(file, block + table));
    return read_readings(file, layout_);
  }
  void expect_refused(const std::string& table, const std::string& words,
                      const std::string& block = "") const {
    const auto readings = read(table, block);
    ASSERT_FALSE(readings) << table;
    EXPECT_NE(readings.problem().message.find(words), std::string::npos) << readings.problem().message;
  }

  Layout layout_ = read_pad();
};

TEST_F(ReadingsFile, TakesBothUnitsOfAPressure) {
  const auto readings =
      read("id,kind,where,filled_ml,gauge_kpa,gauge_mmhg\nf1,fill,hose,20,1.5,\nf2,fill,hose,20,,11.2512\n");
  ASSERT_TRUE(readings) << readings.problem().message;
  EXPECT_NEAR(read_si(readings->rows[0]), 1500.0, 1e-9);
  EXPECT_NEAR(read_si(readings->rows[1]), 1500.0, 0.1);
}

TEST_F(ReadingsFile, TakesErrorsAsSaidAndElseTheDefaultOfTheirKind) {
  const auto readings = read(
      "id,kind,where,filled_ml,gauge_kpa\nf1,fill,hose,20,1.5\n",
      "layout_hash," + layout_hash(layout_) + "\ninstrument fill,syringe and gauge\nerror_percent fill,2\n");
  ASSERT_TRUE(readings) << readings.problem().message;
  EXPECT_DOUBLE_EQ(readings->rows[0].error, 0.02);
  EXPECT_TRUE(readings->instrument(ReadingKind::kFill).error_is_said);
  EXPECT_FALSE(readings->instrument(ReadingKind::kPlate).error_is_said);
  EXPECT_DOUBLE_EQ(readings->instrument(ReadingKind::kPlate).error, default_error(ReadingKind::kPlate));
}

TEST_F(ReadingsFile, PassesOverTheCommasThatASpreadsheetAdds) {
  const auto readings = read("id,kind,where,filled_ml,gauge_kpa\nf1,fill,hose,20,1.5\n,,,,\n",
                             "layout_hash," + layout_hash(layout_) + ",,,\n,,,,\n");
  ASSERT_TRUE(readings) << readings.problem().message;
  EXPECT_EQ(readings->rows.size(), 1u);
}

TEST_F(ReadingsFile, RefusesReadingsOfAnotherLayout) {
  const std::string table = "id,kind,where,filled_ml,gauge_kpa\nf1,fill,hose,20,1.5\n";
  expect_refused(table, "holds readings of another layout (0123456789abcdef",
                 "layout_hash,0123456789abcdef\n");
  expect_refused(table, "does not say which layout was read", "date,2026-11-30\n");
}

TEST_F(ReadingsFile, RefusesEmptyAndDoubleRowsAndValuesThatCannotBe) {
  const std::string heading = "id,kind,where,filled_ml,gauge_kpa,gauge_mmhg\n";
  expect_refused(heading + "f1,fill,hose,20,,\n",
                 "line 4: gauge_kpa or gauge_mmhg of fill reading 'f1' is empty");
  expect_refused(heading + "f1,fill,hose,20,1.5,\nf1,fill,hose,20,1.5,\n",
                 "line 5: the reading 'f1' stands twice");
  expect_refused(heading + "f1,fill,hose,20,-1.5,\n", "line 4: gauge_kpa of reading 'f1' is '-1.5'");
  expect_refused(heading + "f1,fill,hose,20,0,\n", "a reading lies above 0");
  expect_refused(heading + "f1,fill,hose,20,1.5,11\n", "gives gauge_kpa or gauge_mmhg both");
  expect_refused(heading + "f1,fill,hose,20,1.5 kPa,\n", "write a number with a point");
  expect_refused(heading + "f1,filling,hose,20,1.5,\n", "the kind of reading 'f1' is 'filling'");
  expect_refused(heading, "lists no readings");
  expect_refused("id,kind,gauge\nf1,fill,2\n", "line 3: the column 'gauge' is not known");
}

TEST_F(ReadingsFile, RefusesChambersAndInletsThatAreNotThere) {
  expect_refused("id,kind,where,filled_ml,gauge_kpa\nf1,fill,left,20,1.5\n",
                 "names the inlet 'left', which the layout does not have; it has 'hose'");
  expect_refused("id,kind,where,gauge_kpa,height_mm\nb1,bulge,left,1,20\n",
                 "names the chamber 'left', which the layout does not have; it has 'pad'");
}

TEST_F(ReadingsFile, AsksWhatContactWasReadOn) {
  const std::string heading = "id,kind,where,on,gauge_kpa,sensor_kpa,sensor_area_cm2\n";
  expect_refused(heading + "c1,contact,pad,,1,1,1\n", "does not say what it was read on");
  expect_refused(heading + "c1,contact,pad,dummy,1,1,1\nc2,contact,pad,person,1,1,1\n",
                 "mixes contact read on a dummy and on a person");
  expect_refused(heading + "c1,contact,pad,dummy,1,1,1\n", "not on which part of a body",
                 "layout_hash," + layout_hash(layout_) + "\n");
}

TEST_F(ReadingsFile, RefusesAStripThatIsNoLongerUnderItsLoad) {
  expect_refused(
      "id,kind,sheet,width_mm,thickness_mm,length_mm,stretched_mm,mass_g\ns1,strip,skin,10,1.5,50,50,20\n",
      "is no longer under its load (50.0 mm) than without (50.0 mm)");
}

TEST_F(ReadingsFile, KnowsALayoutByEverythingInIt) {
  const std::string before = layout_hash(layout_);
  layout_.skin_sheet.thickness = 1.6 * mm;
  EXPECT_NE(layout_hash(layout_), before);
}

}  // namespace
}  // namespace wrapgauge
