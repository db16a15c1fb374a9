#include "model/core/staging_folder.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <system_error>
#include <utility>

#include "model/core/system_words.hpp"
#include "model/core/temporary_file.hpp"

namespace wrapgauge {
namespace {

namespace fs = std::filesystem;

int open_folder(const fs::path& folder) {
  return ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC | O_NOFOLLOW);
}

void sweep(const fs::path& place, const std::string& begin) {
  for (const fs::path& left : numbered_in(place, begin)) {
    const int descriptor = open_folder(left);
    if (descriptor < 0) continue;
    std::error_code none;
    if (hold_if_free(descriptor)) fs::remove_all(left, none);
    ::close(descriptor);
  }
}

Problem cannot_bring(const fs::path& file, const std::error_code& error) {
  return bad_input(Phrase::worded("Cannot give %1 a second name: %2.",
                                  {name_of(file.string()), system_words(error.value())}));
}

Result<std::monostate> bring_entry(const fs::directory_entry& entry, const fs::path& to) {
  std::error_code error;
  const fs::file_status status = entry.symlink_status(error);
  if (error) return cannot_bring(entry.path(), error);
  if (fs::is_directory(status)) {
    fs::create_directory(to, entry.path(), error);  // with its permissions
    if (error) return cannot_bring(entry.path(), error);
    return bring_over(entry.path(), to, nullptr);
  }
  if (!fs::is_regular_file(status) && !fs::is_symlink(status))
    return bad_input(Phrase::worded("%1 is neither a file nor a folder.", {name_of(entry.path().string())}));
  if (fs::exists(fs::symlink_status(to, error))) {
    if (fs::is_symlink(status) || fs::equivalent(entry.path(), to, error)) return std::monostate{};
    fs::remove(to, error);
  }
  error.clear();
  if (fs::is_symlink(status))
    fs::copy_symlink(entry.path(), to, error);
  else
    fs::create_hard_link(entry.path(), to, error);
  if (error) return cannot_bring(entry.path(), error);
  return std::monostate{};
}

}  // namespace

StagingFolder::StagingFolder(fs::path path, int descriptor)
    : path_(std::move(path)), descriptor_(descriptor) {}

StagingFolder::StagingFolder(StagingFolder&& other) noexcept
    : path_(std::move(other.path_)), descriptor_(std::exchange(other.descriptor_, -1)) {}

StagingFolder::~StagingFolder() {
  if (descriptor_ < 0) return;
  std::error_code none;
  fs::remove_all(path_, none);
  ::close(descriptor_);
}

Result<StagingFolder> StagingFolder::in(const fs::path& place, const std::string& begin) {
  sweep(place, begin);
  for (int number = ::getpid();; ++number) {
    const fs::path path = place / (begin + std::to_string(number));
    if (::mkdir(path.c_str(), 0777) != 0) {
      if (errno == EEXIST) continue;
      return cannot_write_into(place, errno);
    }
    const int descriptor = open_folder(path);
    if (descriptor < 0 && errno == ENOENT) continue;  // another program swept it before it was held
    if (descriptor < 0) return cannot_write_into(place, errno);
    if (!hold_if_free(descriptor) && errno == EWOULDBLOCK) {  // another program is sweeping it
      ::close(descriptor);
      continue;
    }
    StagingFolder made(path, descriptor);
    std::error_code error;
    if (fs::exists(path, error)) return made;
  }
}

std::optional<int> swap_folders(const fs::path& staged, const fs::path& in_use) {
  std::error_code none;
  const unsigned how = fs::exists(in_use, none) ? RENAME_EXCHANGE : RENAME_NOREPLACE;
  if (::renameat2(AT_FDCWD, staged.c_str(), AT_FDCWD, in_use.c_str(), how) == 0) return std::nullopt;
  return errno;
}

Result<std::monostate> bring_over(const fs::path& from, const fs::path& to,
                                  const std::function<bool(const std::string&)>& leave_out) {
  std::error_code error;
  for (fs::directory_iterator at(from, error), end; !error && at != end; at.increment(error))
    if (!leave_out || !leave_out(at->path().filename().string()))
      if (auto brought = bring_entry(*at, to / at->path().filename()); !brought) return brought;
  if (error) return cannot_bring(from, error);
  return std::monostate{};
}

}  // namespace wrapgauge
