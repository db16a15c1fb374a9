#include "model/io/readers/byte_source.hpp"

#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

#include "model/io/readers/mesh_reader_text.hpp"
#include "tests/io/folder.hpp"

namespace wrapgauge {
namespace {

// Words of all lengths, one longer than a stretch, between blanks and ends of lines of every kind.
std::string long_text() {
  std::mt19937 random(77);
  std::string text;
  while (text.size() < 2'300'000) {
    text.append(random() % 30, static_cast<char>('a' + random() % 26));
    text += std::vector<std::string>{" ", "\t", "\n", "\r\n", "\r", "  \n", "\n\r"}[random() % 7];
    if (text.size() > 800'000 && text.size() < 800'030) text.append(1'200'000, 'x');
  }
  return text;
}

ByteSource opened(const ScratchFolder& folder, const std::string& text) {
  return ByteSource(OpenedFile::open(folder.write("text", text)).value());
}

TEST(ByteSource, GivesTheWordsOfAFileAsOfTheTextInMemory) {
  const ScratchFolder folder("byte-source-words");
  const std::string text = long_text();
  ByteSource source = opened(folder, text);
  EXPECT_EQ(source.size(), text.size());
  std::string_view rest = text;
  std::size_t words = 0;
  for (std::string_view word = take_word(rest); !word.empty(); word = take_word(rest), ++words)
    ASSERT_EQ(source.word(), word) << words;
  EXPECT_EQ(source.word(), "");
  EXPECT_GT(words, 10'000u);
  EXPECT_FALSE(source.problem());
}

TEST(ByteSource, GivesTheLinesOfAFileAsOfTheTextInMemory) {
  const ScratchFolder folder("byte-source-lines");
  const std::string text = long_text();
  ByteSource source = opened(folder, text);
  std::string_view rest = text;
  for (std::size_t line = 1; !rest.empty(); ++line) ASSERT_EQ(source.line(), take_line(rest)) << line;
  EXPECT_EQ(source.line(), "");
}

TEST(ByteSource, GivesEveryByteOnceUpToTheEnd) {
  const ScratchFolder folder("byte-source-bytes");
  const std::string text = long_text();
  ByteSource source = opened(folder, text);
  std::string taken;
  for (std::string_view next = source.ahead(50); !next.empty(); next = source.ahead(50)) {
    ASSERT_TRUE(next.size() >= 50 || taken.size() + next.size() == text.size());
    next = next.substr(0, 50);
    taken += next;
    source.skip(next.size());
  }
  EXPECT_TRUE(taken == text);
  ByteSource whole = opened(folder, text);
  EXPECT_TRUE(whole.ahead(text.size()) == text);
}

}  // namespace
}  // namespace wrapgauge
