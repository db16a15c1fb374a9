#pragma once
// Whole files in and out, without exceptions.

#include <cstdint>
#include <filesystem>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

inline constexpr std::uintmax_t kOneGibibyte = std::uintmax_t{1} << 30;

// Reads at most `max_bytes`. Problems: no such file, a folder, larger than `max_bytes`, unreadable.
Result<std::string> read_file(const std::filesystem::path& file, std::uintmax_t max_bytes = kOneGibibyte);

// A file open for reading from front to back. Problems as for read_file.
class OpenedFile {
 public:
  static Result<OpenedFile> open(const std::filesystem::path& file, std::uintmax_t max_bytes = kOneGibibyte);
  OpenedFile(OpenedFile&& other) noexcept;
  OpenedFile& operator=(OpenedFile&& other) noexcept;
  ~OpenedFile();

  std::uintmax_t size() const { return size_; }  // when it was opened
  // The next bytes into `to`, as many as there are room and file for; 0 at the end.
  Result<std::size_t> read(std::span<char> to);

 private:
  OpenedFile(std::filesystem::path file, int descriptor, std::uintmax_t size);

  std::filesystem::path file_;
  int descriptor_ = -1;
  std::uintmax_t size_ = 0;
};

// Writes a temporary file beside `file`, flushes it to the disk and renames it, so that a reader sees the old
// bytes or the new ones and never half of them. Missing folders are not made.
Result<std::monostate> write_file_atomically(const std::filesystem::path& file, std::string_view bytes);

// Files in any folders that belong together: every one is written and flushed under its temporary name before
// the first takes its place, so that a disk that fills up leaves all of the old. Between two renames, each
// some microseconds, a program that is killed leaves the first of them: what names the others comes last.
struct FileToWrite {
  std::filesystem::path path;
  std::string bytes;
};
Result<std::monostate> write_files_together(const std::vector<FileToWrite>& files);

}  // namespace wrapgauge
