#include "model/study/run_lines.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>
#include <nlohmann/json.hpp>
#include <utility>

#include "model/core/system_words.hpp"
#include "model/core/write_all.hpp"

namespace wrapgauge {
namespace {

Problem cannot_keep(const std::filesystem::path& file, int error) {
  return bad_input(
      Phrase::worded("Cannot keep runs in %1: %2.", {name_of(file.string()), system_words(error)}));
}

// Whether the last line lacks its end: the program was killed while it wrote.
bool is_cut_short(int descriptor) {
  const off_t size = ::lseek(descriptor, 0, SEEK_END);
  char last = '\n';
  return size > 0 && ::pread(descriptor, &last, 1, size - 1) == 1 && last != '\n';
}

}  // namespace

std::string one_line(const nlohmann::ordered_json& json) {
  return json.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace);
}

std::string run_line(const std::string& name, const std::string& identity, const std::string& answer) {
  return "{\"run\":" + one_line(name) + ",\"of\":" + identity + ",\"answer\":" + answer + "}\n";
}

std::optional<RunLine> read_run_line(const std::string& line) {
  const auto json = nlohmann::ordered_json::parse(line, nullptr, false);
  if (!json.is_object() || !json.contains("of") || !json.contains("answer")) return std::nullopt;
  return RunLine{one_line(json["of"]), one_line(json["answer"])};
}

RunLineFile::RunLineFile(std::filesystem::path file, int descriptor)
    : file_(std::move(file)), descriptor_(descriptor) {}

RunLineFile::RunLineFile(RunLineFile&& other) noexcept
    : file_(std::move(other.file_)), descriptor_(std::exchange(other.descriptor_, -1)) {}

RunLineFile::~RunLineFile() {
  if (descriptor_ >= 0) ::close(descriptor_);
}

Result<RunLineFile> RunLineFile::open(const std::filesystem::path& file) {
  const int descriptor = ::open(file.c_str(), O_RDWR | O_CREAT | O_APPEND | O_CLOEXEC, 0644);
  if (descriptor < 0) return cannot_keep(file, errno);
  RunLineFile opened(file, descriptor);
  if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0)
    return bad_input("Another program is solving the runs of " + file.string() +
                     ": wait until it ends, stop it, or give this one another part or folder.");
  if (is_cut_short(descriptor))
    if (const int error = write_all(descriptor, "\n")) return cannot_keep(file, error);
  return opened;
}

Result<std::monostate> RunLineFile::append(const std::string& line) {
  if (const int error = write_all(descriptor_, line)) return cannot_keep(file_, error);
  if (::fdatasync(descriptor_) != 0) return cannot_keep(file_, errno);
  return std::monostate{};
}

}  // namespace wrapgauge
