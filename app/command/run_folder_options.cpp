#include "app/command/run_folder_options.hpp"

#include <CLI/CLI.hpp>

#include "app/command/exit_code.hpp"
#include "app/command/wrapped_text.hpp"

namespace wrapgauge {

void add_run_folder_options(CLI::App& command, RunFolderOptions& wanted) {
  command.add_option("--out", wanted.folder, "Folder for runs and results; made if it is missing")
      ->required()
      ->type_name("DIR");
  command.add_option("--part", wanted.part, "Solve only this part of the runs, e.g. 2/4")->type_name("I/N");
  command.add_option("--merge", wanted.merge, "Take finished runs from this folder of another part too")
      ->allow_extra_args(false)
      ->type_name("DIR");
}

RunFolders run_folders(const RunFolderOptions& wanted) {
  RunFolders folders{wanted.folder / "runs", {}};
  for (const std::filesystem::path& folder : wanted.merge) folders.also_from.push_back(folder / "runs");
  return folders;
}

int say_part_done(const std::string& command, int missing, std::size_t runs, const RunFolderOptions& wanted,
                  Streams streams) {
  streams.out << wrapped("Part " + (wanted.part.empty() ? "1/1" : wanted.part) + " is done; " +
                             std::to_string(missing) + " of " + std::to_string(runs) +
                             " runs are still to come from other parts. Runs are kept in " +
                             (wanted.folder / "runs").string() + "; when all parts are done, run " + command +
                             " once more without --part, with --merge for each other folder.",
                         0);
  return kExitDone;
}

}  // namespace wrapgauge
