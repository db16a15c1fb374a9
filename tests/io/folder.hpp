#pragma once
#include <gtest/gtest.h>

#include <filesystem>
#include <string>
#include <string_view>

#include "model/core/file.hpp"

namespace wrapgauge {

// A folder of its own for one test, gone afterwards.
class ScratchFolder {
 public:
  explicit ScratchFolder(const std::string& name)
      : path_(std::filesystem::path(testing::TempDir()) / ("wrapgauge-" + name)) {
    std::filesystem::remove_all(path_);
    std::filesystem::create_directories(path_);
  }
  ~ScratchFolder() { std::filesystem::remove_all(path_); }
  ScratchFolder(const ScratchFolder&) = delete;
  ScratchFolder& operator=(const ScratchFolder&) = delete;

  std::filesystem::path write(const std::string& name, std::string_view bytes) const {
    EXPECT_TRUE(write_file_atomically(path_ / name, bytes).ok());
    return path_ / name;
  }

 private:
  std::filesystem::path path_;
};

}  // namespace wrapgauge
