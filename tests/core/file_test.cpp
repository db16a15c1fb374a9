#include "model/core/file.hpp"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "model/core/temporary_file.hpp"

namespace wrapgauge {
namespace {

class File : public testing::Test {
 protected:
  void SetUp() override {
    folder_ =
        std::filesystem::path(testing::TempDir()) /
        (std::string("wrapgauge-file-") + testing::UnitTest::GetInstance()->current_test_info()->name());
    std::filesystem::remove_all(folder_);
    std::filesystem::create_directories(folder_);
  }
  void TearDown() override { std::filesystem::remove_all(folder_); }
  std::filesystem::path folder_;
};

TEST_F(File, GivesBackTheBytesThatWereWritten) {
  const std::string bytes("a\0b\r\n\xff", 6);
  const auto file = folder_ / "name with spaces ü.bin";
  ASSERT_TRUE(write_file_atomically(file, bytes).ok());
  const auto read = read_file(file);
  ASSERT_TRUE(read.ok());
  EXPECT_EQ(*read, bytes);
}

TEST_F(File, LeavesNothingBesideWhatItWrites) {
  ASSERT_TRUE(write_file_atomically(folder_ / "one", "1").ok());
  ASSERT_TRUE(write_file_atomically(folder_ / "one", "22").ok());
  int entries = 0;
  for (const auto& entry : std::filesystem::directory_iterator(folder_)) {
    ++entries;
    EXPECT_EQ(entry.path().filename(), "one");
  }
  EXPECT_EQ(entries, 1);
  EXPECT_EQ(*read_file(folder_ / "one"), "22");
}

TEST_F(File, IsRefusedWhenLargerThanAsked) {
  ASSERT_TRUE(write_file_atomically(folder_ / "big", "12345").ok());
  const auto read = read_file(folder_ / "big", 4);
  ASSERT_FALSE(read.ok());
  EXPECT_NE(read.problem().message.find("5 bytes"), std::string::npos);
  EXPECT_TRUE(read_file(folder_ / "big", 5).ok());
}

TEST_F(File, ThatIsMissingOrAFolderIsAProblem) {
  EXPECT_FALSE(read_file(folder_ / "none").ok());
  const auto read = read_file(folder_);
  ASSERT_FALSE(read.ok());
  EXPECT_NE(read.problem().message.find("folder"), std::string::npos);
  EXPECT_FALSE(write_file_atomically(folder_ / "no such folder" / "x", "1").ok());
  EXPECT_FALSE(write_file_atomically(folder_, "1").ok());
}

TEST_F(File, OfAProgramThatWasStoppedIsSweptWithTheNextWriting) {
  for (const char* name : {"one.part-4242", "one.part-4242-7"}) std::ofstream(folder_ / name) << "half";
  for (const char* name : {"one.part-two", "another.part-4242"}) std::ofstream(folder_ / name) << "mine";
  ASSERT_TRUE(write_file_atomically(folder_ / "one", "1").ok());
  EXPECT_FALSE(std::filesystem::exists(folder_ / "one.part-4242"));
  EXPECT_FALSE(std::filesystem::exists(folder_ / "one.part-4242-7"));
  EXPECT_TRUE(std::filesystem::exists(folder_ / "one.part-two"));
  EXPECT_TRUE(std::filesystem::exists(folder_ / "another.part-4242"));
}

TEST_F(File, ThatIsBeingWrittenIsNotSweptByAnother) {
  auto first = TemporaryFile::beside(folder_ / "one");
  ASSERT_TRUE(first.ok());
  TemporaryFile writing = std::move(first).value();
  ASSERT_TRUE(writing.fill("first").ok());
  ASSERT_TRUE(write_file_atomically(folder_ / "one", "second").ok());
  ASSERT_TRUE(writing.take_place().ok());
  EXPECT_EQ(*read_file(folder_ / "one"), "first");
}

TEST_F(File, TogetherWithOneThatCannotBeWrittenStaysAsItWas) {
  ASSERT_TRUE(write_file_atomically(folder_ / "one", "old").ok());
  EXPECT_FALSE(write_files_together({{folder_ / "one", "new"}, {folder_ / "none" / "two", "new"}}).ok());
  EXPECT_EQ(*read_file(folder_ / "one"), "old");
  ASSERT_TRUE(write_files_together({{folder_ / "one", "new"}, {folder_ / "two", "new"}}).ok());
  EXPECT_EQ(*read_file(folder_ / "one"), "new");
  EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder_), {}), 2);
}

}  // namespace
}  // namespace wrapgauge
