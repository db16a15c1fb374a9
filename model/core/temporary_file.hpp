#pragma once
// A file that is written beside the one whose place it takes.

#include <filesystem>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

// Held by a lock while the program runs, so that what a stopped program left is told from what another one is
// writing. Gone at the end unless it took its place.
class TemporaryFile {
 public:
  // TARGET.part-NUMBER. What stopped programs left of this target is removed first.
  static Result<TemporaryFile> beside(const std::filesystem::path& target);
  TemporaryFile(TemporaryFile&& other) noexcept;
  TemporaryFile& operator=(TemporaryFile&&) = delete;
  ~TemporaryFile();

  Result<std::monostate> fill(std::string_view bytes);  // written and flushed to the disk
  Result<std::monostate> take_place();                  // one rename

 private:
  TemporaryFile(std::filesystem::path target, std::filesystem::path file, int descriptor);

  std::filesystem::path target_, file_;
  int descriptor_ = -1;
};

// What lies in a folder under a name of `begin` and a number, in which there may be a `between` too.
std::vector<std::filesystem::path> numbered_in(const std::filesystem::path& folder, const std::string& begin,
                                               const std::string& between = "");

// Whether nothing holds the file or folder behind the descriptor; it is held by it from then on.
bool hold_if_free(int descriptor);

// Flushes the names in a folder to the disk; says nothing where a disk cannot.
void flush_folder(const std::filesystem::path& folder);

// "Cannot write FILE: why.", "Cannot write into FOLDER: why.", of the number of an error.
Problem cannot_write(const std::filesystem::path& file, int error);
Problem cannot_write_into(const std::filesystem::path& folder, int error);

}  // namespace wrapgauge
