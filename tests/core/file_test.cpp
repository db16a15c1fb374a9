#include "model/core/file.hpp"

#include <gtest/gtest.h>

#include <filesystem>

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

}  // namespace
}  // namespace wrapgauge
