#include "model/core/file.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <utility>

#include "model/core/system_words.hpp"
#include "model/core/temporary_file.hpp"

namespace wrapgauge {
namespace {

Problem cannot_read(const std::filesystem::path& file, const Phrase& why) {
  return bad_input(Phrase::worded("Cannot read %1: %2.", {name_of(file.string()), why}));
}

}  // namespace

OpenedFile::OpenedFile(std::filesystem::path file, int descriptor, std::uintmax_t size)
    : file_(std::move(file)), descriptor_(descriptor), size_(size) {}

OpenedFile::OpenedFile(OpenedFile&& other) noexcept
    : file_(std::move(other.file_)), descriptor_(std::exchange(other.descriptor_, -1)), size_(other.size_) {}

OpenedFile& OpenedFile::operator=(OpenedFile&& other) noexcept {
  file_.swap(other.file_);
  std::swap(descriptor_, other.descriptor_);
  std::swap(size_, other.size_);
  return *this;
}

OpenedFile::~OpenedFile() {
  if (descriptor_ >= 0) ::close(descriptor_);
}

Result<OpenedFile> OpenedFile::open(const std::filesystem::path& file, std::uintmax_t max_bytes) {
  // Non-blocking, so that opening a named pipe does not wait for ever before it is refused below.
  const int descriptor = ::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
  if (descriptor < 0) return cannot_read(file, system_words(errno));
  OpenedFile in(file, descriptor, 0);
  struct stat status {};
  if (::fstat(descriptor, &status) != 0) return cannot_read(file, system_words(errno));
  if (S_ISDIR(status.st_mode)) return cannot_read(file, Phrase::worded("it is a folder"));
  if (!S_ISREG(status.st_mode)) return cannot_read(file, Phrase::worded("it is not a regular file"));
  in.size_ = static_cast<std::uintmax_t>(status.st_size);
  if (in.size_ > max_bytes)
    return cannot_read(
        file, Phrase::worded("it holds %1 bytes and at most %2 are read",
                             {figures_of(std::to_string(in.size_)), figures_of(std::to_string(max_bytes))}));
  return in;
}

Result<std::size_t> OpenedFile::read(std::span<char> to) {
  std::size_t filled = 0;
  while (filled < to.size()) {
    const ssize_t got = ::read(descriptor_, to.data() + filled, to.size() - filled);
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return cannot_read(file_, system_words(errno));
    if (got == 0) break;
    filled += static_cast<std::size_t>(got);
  }
  return filled;
}

Result<std::string> read_file(const std::filesystem::path& file, std::uintmax_t max_bytes) {
  auto opened = OpenedFile::open(file, max_bytes);
  if (!opened) return opened.problem();
  OpenedFile in = std::move(opened).value();
  std::string bytes(static_cast<std::size_t>(in.size()), '\0');
  const auto filled = in.read(bytes);
  if (!filled) return filled.problem();
  bytes.resize(*filled);  // the file may have shrunk since its size was asked
  return bytes;
}

Result<std::monostate> write_file_atomically(const std::filesystem::path& file, std::string_view bytes) {
  return write_files_together({{file, std::string(bytes)}});
}

Result<std::monostate> write_files_together(const std::vector<FileToWrite>& files) {
  std::vector<TemporaryFile> written;
  for (const FileToWrite& file : files) {
    auto made = TemporaryFile::beside(file.path);
    if (!made) return made.problem();
    written.push_back(std::move(made).value());
    if (auto filled = written.back().fill(file.bytes); !filled) return filled.problem();
  }
  for (TemporaryFile& file : written)
    if (auto placed = file.take_place(); !placed) return placed.problem();
  return std::monostate{};
}

}  // namespace wrapgauge
