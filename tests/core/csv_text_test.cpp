#include "model/core/csv_text.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

TEST(CsvField, ThatASpreadsheetWouldCalculateIsTextForIt) {
  for (const char* formula : {"=1+1", "+1", "-1", "@a"})
    EXPECT_EQ(csv_field(formula), "\"'" + std::string(formula) + "\"");
}

TEST(CsvField, ThatIsAFormulaBehindSpacesOrControlCharactersIsTextToo) {
  EXPECT_EQ(csv_field("  =1+1"), "\"'  =1+1\"");
  EXPECT_EQ(csv_field("\t=1+1"), "\"' =1+1\"");
  EXPECT_EQ(csv_field("\a=1+1"), "\"'=1+1\"");
  EXPECT_EQ(csv_field("\xC2\xA0=1+1"), "\"'\xC2\xA0=1+1\"");  // a space that does not break
}

TEST(CsvField, LeavesNamesAloneAndDoublesQuotes) {
  EXPECT_EQ(csv_field("left - back"), "\"left - back\"");
  EXPECT_EQ(csv_field("12\" pad"), "\"12\"\" pad\"");
  EXPECT_EQ(csv_field(""), "\"\"");
}

}  // namespace
}  // namespace wrapgauge
