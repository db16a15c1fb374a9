#include "model/core/clean_text.hpp"

#include <gtest/gtest.h>

#include "model/core/phrase.hpp"

namespace wrapgauge {
namespace {

TEST(CleanText, HoldsNoCharacterThatATerminalObeys) {
  EXPECT_EQ(clean_text("left\033[31m back\a"), "left[31m back");
  EXPECT_EQ(clean_text("two\nlines\tand\rmore"), "two lines and more");
  EXPECT_EQ(clean_text("a\xC2\x9B"
                       "31mb"),
            "a31mb");  // C1: the one-character form of ESC [
  EXPECT_EQ(clean_text(std::string("a\x7F\0b", 4)), "ab");
}

TEST(CleanText, HoldsNothingThatTurnsTheDirectionOfWriting) {
  EXPECT_EQ(clean_text("a\u202Eb\u2066c\u2069d\u2028e"), "abcde");
  EXPECT_EQ(clean_text("a\uFFFE\uFFFFb"), "ab");
  EXPECT_EQ(clean_text("\u2027\u202F\u2065\u206A"), "\u2027\u202F\u2065\u206A");
  EXPECT_EQ(clean_text("\xE2\x80"), "\xE2\x80");
}

TEST(CleanText, LeavesEveryOtherLetterAlone) {
  const std::string words = "Knöchel, 1 cm², „links“ – 20 °C, é, 左";
  EXPECT_EQ(clean_text(words), words);
  EXPECT_EQ(clean_lines("a\nb\033c"), "a\nbc");
}

TEST(CleanText, IsWhatAPhraseSaysOfNames) {
  EXPECT_EQ(english(Phrase::worded("Chamber '%1'", {name_of("x\033]0;y\a")})), "Chamber 'x]0;y'");
}

}  // namespace
}  // namespace wrapgauge
