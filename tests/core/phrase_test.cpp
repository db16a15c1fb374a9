#include "model/core/phrase.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

TEST(Phrase, InEnglishEachValueStandsWhereItsNumberIsAndPerCentSignsStay) {
  const Phrase phrase =
      Phrase::worded("%2 of '%1' at 5 % and %9: %1.", {name_of("a%2"), percent_of(0.25), figures_of(7)});
  EXPECT_EQ(english(phrase), "25 % of 'a%2' at 5 % and %9: a%2.");
}

TEST(Phrase, FiguresCarryTheirUnitsAndTheDigitsTheyDeserve) {
  const Phrase row = in_a_row({figures_of(4.2 * kPa), figures_of(750.0 * second), millimetres_of(12.34 * mm),
                               millimetres_of(12.34 * mm, 0)},
                              "; ");
  EXPECT_EQ(english(row), "4.2 kPa (32 mmHg); 12.5 min; 12.3 mm; 12 mm");
  EXPECT_EQ(english(in_a_row({})), "");
}

// Names are nobody's words to change, however they look.
TEST(Phrase, AnotherLanguageChangesPatternsAndFiguresAtEveryDepthButNoName) {
  const Wording loud{
      [](const std::string& pattern) { return pattern == "in %1" ? "%1, IN" : "<" + pattern + ">"; },
      [](const std::string& figures) { return "#" + figures; }};
  const Phrase inner = Phrase::worded("in %1", {name_of("in %1")});
  EXPECT_EQ(said(Phrase::worded("%1 %2 %3", {inner, figures_of(3), table_words("a source")}), loud),
            "<in %1, IN #3 <a source>>");
}

}  // namespace
}  // namespace wrapgauge
