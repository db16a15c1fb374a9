#include "model/core/temporary_file.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <optional>
#include <system_error>
#include <utility>

#include "model/core/system_words.hpp"
#include "model/core/write_all.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kPart = ".part-";

std::filesystem::path folder_of(const std::filesystem::path& file) {
  return file.parent_path().empty() ? std::filesystem::path(".") : file.parent_path();
}

void remove_if_free(const std::filesystem::path& file) {
  const int descriptor = ::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK);
  if (descriptor < 0) return;
  if (hold_if_free(descriptor)) ::unlink(file.c_str());
  ::close(descriptor);
}

void sweep(const std::filesystem::path& target) {
  for (const auto& left : numbered_in(folder_of(target), target.filename().string() + kPart, "-"))
    remove_if_free(left);
}

// The number of an error, or nothing when the file behind the descriptor is held and still has its name.
std::optional<int> hold(int descriptor, bool& has_name) {
  while (::flock(descriptor, LOCK_EX) != 0)
    if (errno != EINTR) break;  // a disk without locks: nobody sweeps there either
  struct stat status {};
  if (::fstat(descriptor, &status) != 0) return errno;
  has_name = status.st_nlink > 0;
  return std::nullopt;
}

}  // namespace

std::vector<std::filesystem::path> numbered_in(const std::filesystem::path& folder, const std::string& begin,
                                               const std::string& between) {
  std::vector<std::filesystem::path> found;
  std::error_code error;
  for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
    const std::string name = at->path().filename().string();
    if (name.size() > begin.size() && name.starts_with(begin) &&
        name.find_first_not_of("0123456789" + between, begin.size()) == std::string::npos)
      found.push_back(at->path());
  }
  return found;
}

bool hold_if_free(int descriptor) {
  return ::flock(descriptor, LOCK_EX | LOCK_NB) == 0;
}

void flush_folder(const std::filesystem::path& folder) {
  const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (descriptor < 0) return;
  ::fsync(descriptor);
  ::close(descriptor);
}

Problem cannot_write(const std::filesystem::path& file, int error) {
  return bad_input(Phrase::worded("Cannot write %1: %2.", {name_of(file.string()), system_words(error)}));
}

Problem cannot_write_into(const std::filesystem::path& folder, int error) {
  return bad_input(
      Phrase::worded("Cannot write into %1: %2.", {name_of(folder.string()), system_words(error)}));
}

TemporaryFile::TemporaryFile(std::filesystem::path target, std::filesystem::path file, int descriptor)
    : target_(std::move(target)), file_(std::move(file)), descriptor_(descriptor) {}

TemporaryFile::TemporaryFile(TemporaryFile&& other) noexcept
    : target_(std::move(other.target_)),
      file_(std::move(other.file_)),
      descriptor_(std::exchange(other.descriptor_, -1)) {}

TemporaryFile::~TemporaryFile() {
  if (descriptor_ < 0) return;
  ::unlink(file_.c_str());
  ::close(descriptor_);
}

Result<TemporaryFile> TemporaryFile::beside(const std::filesystem::path& target) {
  static std::atomic<unsigned> counted = 0;
  sweep(target);
  for (;;) {
    // The numbers keep two writers apart; they never reach the finished file.
    std::filesystem::path file = target;
    file += kPart + std::to_string(::getpid()) + "-" + std::to_string(++counted);
    const int descriptor = ::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0644);
    if (descriptor < 0 && errno == EEXIST) continue;
    if (descriptor < 0) return cannot_write(target, errno);
    TemporaryFile made(target, std::move(file), descriptor);
    bool has_name = false;
    if (const auto error = hold(descriptor, has_name)) return cannot_write(target, *error);
    if (has_name) return made;  // else another program swept it before it was held
  }
}

Result<std::monostate> TemporaryFile::fill(std::string_view bytes) {
  if (const int error = write_all(descriptor_, bytes)) return cannot_write(target_, error);
  if (::fsync(descriptor_) != 0) return cannot_write(target_, errno);
  return std::monostate{};
}

Result<std::monostate> TemporaryFile::take_place() {
  if (::rename(file_.c_str(), target_.c_str()) != 0) return cannot_write(target_, errno);
  ::close(std::exchange(descriptor_, -1));
  return std::monostate{};
}

}  // namespace wrapgauge
