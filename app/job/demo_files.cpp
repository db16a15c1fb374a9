#include "app/job/demo_files.hpp"

#include <algorithm>
#include <system_error>

#include "app/job/resource_folder.hpp"
#include "model/core/file.hpp"
#include "model/core/system_words.hpp"

namespace wrapgauge {
namespace {

Result<std::vector<std::filesystem::path>> json_files(const std::filesystem::path& folder) {
  std::vector<std::filesystem::path> files;
  std::error_code error;
  for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end; at.increment(error))
    if (at->path().extension() == ".json") files.push_back(at->path());
  if (error || files.empty())
    return bad_input(Phrase::worded("folder '%1' holds no demo files.", {name_of(folder.string())}));
  std::sort(files.begin(), files.end());
  return files;
}

// Copies one folder of JSON files; returns what was written.
Result<std::vector<std::filesystem::path>> copy_folder(const std::filesystem::path& from,
                                                       const std::filesystem::path& to) {
  const auto files = json_files(from);
  if (!files) return files.problem();
  std::error_code error;
  std::filesystem::create_directories(to, error);
  if (error)
    return bad_input(Phrase::worded("folder '%1' could not be made: %2.",
                                    {name_of(to.string()), system_words(error.value())}));
  std::vector<std::filesystem::path> written;
  for (const std::filesystem::path& file : *files) {
    const auto bytes = read_file(file);
    if (!bytes) return bytes.problem();
    if (auto done = write_file_atomically(to / file.filename(), *bytes); !done) return done.problem();
    written.push_back(to / file.filename());
  }
  return written;
}

// The invented readings of a plan, where the window looks for them. Those that somebody typed stay.
Result<std::monostate> copy_readings(const std::filesystem::path& from, const std::filesystem::path& to) {
  const std::filesystem::path file = std::filesystem::path("forearm-cuff-bench") / "readings.csv";
  std::error_code error;
  if (std::filesystem::exists(to / file, error)) return std::monostate{};
  const auto bytes = read_file(from / file);
  if (!bytes) return bytes.problem();
  std::filesystem::create_directories((to / file).parent_path(), error);
  if (error)
    return bad_input(
        Phrase::worded("folder '%1' could not be made: %2.",
                       {name_of((to / file).parent_path().string()), system_words(error.value())}));
  return write_file_atomically(to / file, *bytes);
}

}  // namespace

Result<std::vector<std::filesystem::path>> write_demo(const std::filesystem::path& folder) {
  const auto resources = resource_folder();
  if (!resources) return resources.problem();
  // The plans name their layouts relative to themselves, so the folders keep their names.
  const auto layouts = copy_folder(*resources / "layouts", folder / "layouts");
  if (!layouts) return layouts.problem();
  const auto plans = copy_folder(*resources / "plans", folder / "plans");
  if (!plans) return plans.problem();
  if (auto copied = copy_readings(*resources / "plans", folder / "plans"); !copied) return copied.problem();
  return plans;
}

}  // namespace wrapgauge
