#include "model/core/markdown_text.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

TEST(MarkdownText, HoldsNoLinkNoHtmlAndNoMarkup) {
  EXPECT_EQ(markdown_text("[a](b)"), "\\[a\\](b)");
  EXPECT_EQ(markdown_text("<b>&lt;"), "\\<b\\>\\&lt;");
  EXPECT_EQ(markdown_text("**a** _b_ ~~c~~ `d`"), "\\*\\*a\\*\\* \\_b\\_ \\~\\~c\\~\\~ \\`d\\`");
  EXPECT_EQ(markdown_text("a|b\nc"), "a\\|b c");
}

// Else "\[" would come out as an escaped backslash before a bracket that opens a link.
TEST(MarkdownText, EscapesTheBackslashToo) {
  EXPECT_EQ(markdown_text("\\[a](b)"), "\\\\\\[a\\](b)");
}

TEST(MarkdownText, LeavesNoAddressThatAReaderMakesALinkOf) {
  EXPECT_EQ(markdown_text("see https://a.example/b"), "see https\\://a.example/b");
  EXPECT_EQ(markdown_text("WWW.a.example"), "WWW\\.a.example");
  EXPECT_EQ(markdown_text("me@a.example"), "me\\@a.example");
  EXPECT_EQ(markdown_text("ratio 1:2, say: yes."), "ratio 1:2, say: yes.");
}

TEST(MarkdownText, BeginsNoListAndNoHeading) {
  EXPECT_EQ(markdown_text("- a"), "\\- a");
  EXPECT_EQ(markdown_text("12. a"), "12\\. a");
  EXPECT_EQ(markdown_text("# a"), "\\# a");
  EXPECT_EQ(markdown_text("==="), "\\===");
  EXPECT_EQ(markdown_text("---"), "\\---");
  EXPECT_EQ(markdown_text("1.5 kPa, -2 mm"), "1.5 kPa, -2 mm");
}

TEST(MarkdownText, HoldsNoControlCharacter) {
  EXPECT_EQ(markdown_text("a\033[31mb"), "a\\[31mb");
}

}  // namespace
}  // namespace wrapgauge
