#include "model/core/file.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

namespace wrapgauge {
namespace {

// Closes a POSIX descriptor on every way out.
class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  int number() const { return number_; }
  bool close() {
    const int number = number_;
    number_ = -1;
    return ::close(number) == 0;
  }

 private:
  int number_;
};

std::string reason(int error) {
  return std::generic_category().message(error);
}

Problem cannot(const std::string& verb, const std::filesystem::path& file, const std::string& why) {
  return bad_input("Cannot " + verb + " " + file.string() + ": " + why + ".");
}

bool write_all(int descriptor, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
    if (written < 0 && errno == EINTR) continue;
    if (written <= 0) return false;
    bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return true;
}

}  // namespace

Result<std::string> read_file(const std::filesystem::path& file, std::uintmax_t max_bytes) {
  // Non-blocking, so that opening a named pipe does not wait for ever before it is refused below.
  Descriptor in(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
  if (in.number() < 0) return cannot("read", file, reason(errno));
  struct stat status {};
  if (::fstat(in.number(), &status) != 0) return cannot("read", file, reason(errno));
  if (S_ISDIR(status.st_mode)) return cannot("read", file, "it is a folder");
  if (!S_ISREG(status.st_mode)) return cannot("read", file, "it is not a regular file");
  const auto too_big = [&](std::uintmax_t size) {
    return cannot(
        "read", file,
        "it holds " + std::to_string(size) + " bytes and at most " + std::to_string(max_bytes) + " are read");
  };
  if (static_cast<std::uintmax_t>(status.st_size) > max_bytes)
    return too_big(static_cast<std::uintmax_t>(status.st_size));
  std::string bytes(static_cast<std::size_t>(status.st_size), '\0');
  std::size_t filled = 0;
  while (filled < bytes.size()) {
    const ssize_t got = ::read(in.number(), bytes.data() + filled, bytes.size() - filled);
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return cannot("read", file, reason(errno));
    if (got == 0) break;  // the file shrank since its size was asked
    filled += static_cast<std::size_t>(got);
  }
  bytes.resize(filled);
  return bytes;
}

Result<std::monostate> write_file_atomically(const std::filesystem::path& file, std::string_view bytes) {
  // The process number keeps two writers apart; it never reaches the finished file.
  std::filesystem::path temporary = file;
  temporary += ".part-" + std::to_string(::getpid());
  Descriptor out(::open(temporary.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0644));
  if (out.number() < 0) return cannot("write", file, reason(errno));
  const auto give_up = [&](int error) {
    ::unlink(temporary.c_str());
    return cannot("write", file, reason(error));
  };
  if (!write_all(out.number(), bytes) || ::fsync(out.number()) != 0) return give_up(errno);
  if (!out.close()) return give_up(errno);
  if (::rename(temporary.c_str(), file.c_str()) != 0) return give_up(errno);
  return std::monostate{};
}

}  // namespace wrapgauge
