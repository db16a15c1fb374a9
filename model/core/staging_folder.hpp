#pragma once
// A folder that is filled out of sight before what is in it is seen.

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <variant>

#include "model/core/result.hpp"

namespace wrapgauge {

// Held by a lock while the program runs; gone at the end, with all that is in it.
class StagingFolder {
 public:
  // PLACE/BEGIN + number. What stopped programs left there of this beginning is removed first; nothing in it
  // is the only one of its kind, since what is brought over has its other name in the folder in use.
  static Result<StagingFolder> in(const std::filesystem::path& place, const std::string& begin);
  StagingFolder(StagingFolder&& other) noexcept;
  StagingFolder& operator=(StagingFolder&&) = delete;
  ~StagingFolder();

  const std::filesystem::path& path() const { return path_; }

 private:
  StagingFolder(std::filesystem::path path, int descriptor);

  std::filesystem::path path_;
  int descriptor_ = -1;
};

// Two folders of one disk change names in one step (RENAME_EXCHANGE of Linux); where `in_use` does not exist,
// `staged` takes its name. The number of an error where the system cannot.
std::optional<int> swap_folders(const std::filesystem::path& staged, const std::filesystem::path& in_use);

// Gives whatever lies in `from` a name in `to` too (hard links; folders are made anew), but for those entries
// of `from` itself that `leave_out` names (null: none). What is there already under that name is replaced
// unless it is the same file. Problem: a disk without hard links, or what is neither file, folder nor link.
Result<std::monostate> bring_over(const std::filesystem::path& from, const std::filesystem::path& to,
                                  const std::function<bool(const std::string&)>& leave_out);

}  // namespace wrapgauge
