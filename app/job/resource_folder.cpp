#include "app/job/resource_folder.hpp"

#include <cstdlib>
#include <system_error>

namespace wrapgauge {
namespace {

bool holds_tables(const std::filesystem::path& folder) {
  std::error_code error;
  return std::filesystem::exists(folder / "limits.json", error);
}

}  // namespace

Result<std::filesystem::path> resource_folder() {
  if (const char* chosen = std::getenv("WRAPGAUGE_RESOURCES"); chosen && *chosen) {
    if (holds_tables(chosen)) return std::filesystem::path(chosen);
    return bad_input(Phrase::worded(
        "WRAPGAUGE_RESOURCES is '%1', where no limits.json lies: set it to the program's resources "
        "folder or unset it.",
        {name_of(chosen)}));
  }
  std::error_code error;
  const std::filesystem::path program = std::filesystem::read_symlink("/proc/self/exe", error);
  if (!error)
    if (const auto beside = program.parent_path().parent_path() / "share/wrapgauge"; holds_tables(beside))
      return beside;
  const std::filesystem::path source = WRAPGAUGE_RESOURCES_SOURCE;  // empty in a package
  if (!source.empty() && holds_tables(source)) return source;
  return bad_input(Phrase::worded(
      "the program's tables (limits.json and others) were not found: set WRAPGAUGE_RESOURCES to "
      "their folder."));
}

}  // namespace wrapgauge
