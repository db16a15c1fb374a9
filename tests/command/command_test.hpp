#pragma once
// A folder of its own for each test of the command line: empty at the start, gone at the end.

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>

#include "model/core/file.hpp"
#include "tests/command/run_command.hpp"

namespace wrapgauge {

class CommandTest : public testing::Test {
 protected:
  void SetUp() override {
    const testing::TestInfo& test = *testing::UnitTest::GetInstance()->current_test_info();
    folder_ = std::filesystem::temp_directory_path() / ("wrapgauge-command-" + std::to_string(getpid()) +
                                                        "-" + test.test_suite_name() + "-" + test.name());
    std::filesystem::remove_all(folder_);
    std::filesystem::create_directories(folder_);
  }
  void TearDown() override { std::filesystem::remove_all(folder_); }

  std::string path(const std::string& name) const { return (folder_ / name).string(); }
  std::string write(const std::string& name, const std::string& text) const {
    std::ofstream(path(name), std::ios::binary) << text;
    return path(name);
  }
  std::string bytes(const std::string& name) const {
    const auto read = read_file(path(name));
    EXPECT_TRUE(read.ok()) << name;
    return read ? *read : "";
  }

  std::filesystem::path folder_;
};

}  // namespace wrapgauge
