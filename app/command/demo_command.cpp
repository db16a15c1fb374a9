#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>
#include <system_error>
#include <vector>

#include "app/command/commands.hpp"
#include "app/command/resource_folder.hpp"
#include "model/core/file.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {
namespace {

Result<std::vector<std::filesystem::path>> json_files(const std::filesystem::path& folder) {
  std::vector<std::filesystem::path> files;
  std::error_code error;
  for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end; at.increment(error))
    if (at->path().extension() == ".json") files.push_back(at->path());
  if (error || files.empty()) return bad_input("folder '" + folder.string() + "' holds no demo files.");
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
  if (error) return bad_input("folder '" + to.string() + "' could not be made: " + error.message() + ".");
  std::vector<std::filesystem::path> written;
  for (const std::filesystem::path& file : *files) {
    const auto bytes = read_file(file);
    if (!bytes) return bytes.problem();
    if (auto done = write_file_atomically(to / file.filename(), *bytes); !done) return done.problem();
    written.push_back(to / file.filename());
  }
  return written;
}

int run_demo(const std::filesystem::path& folder, Streams streams) {
  const auto resources = resource_folder();
  if (!resources) return say_problem(resources.problem(), streams);
  // The plans name their layouts relative to themselves, so the folders keep their names.
  const auto layouts = copy_folder(*resources / "layouts", folder / "layouts");
  if (!layouts) return say_problem(layouts.problem(), streams);
  const auto plans = copy_folder(*resources / "plans", folder / "plans");
  if (!plans) return say_problem(plans.problem(), streams);
  for (const std::filesystem::path& plan : *plans)
    streams.out << "wrapgauge estimate " << plan.string() << " --out " << (folder / plan.stem()).string()
                << "\n";
  return kExitDone;
}

}  // namespace

void add_demo(CLI::App& app, Action& action) {
  auto folder = std::make_shared<std::string>();
  CLI::App* command = app.add_subcommand("demo", "Write the demo plans and say how to run them");
  command->add_option("folder", *folder, "Folder to write them to; made if it is missing")
      ->required()
      ->type_name("DIR");
  command->footer("Example:\n  wrapgauge demo demo-plans\n");
  command->callback(
      [&action, folder] { action = [folder](Streams streams) { return run_demo(*folder, streams); }; });
}

}  // namespace wrapgauge
