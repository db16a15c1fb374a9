#pragma once
#include <filesystem>
#include <string>
#include <vector>

#include "app/command/commands.hpp"
#include "model/study/many_runs.hpp"

namespace CLI {
class App;
}

namespace wrapgauge {

// --out, --part and --merge of the commands that solve many runs.
struct RunFolderOptions {
  std::filesystem::path folder;
  std::vector<std::filesystem::path> merge;
  std::string part;
};
// `wanted` outlives the parsing.
void add_run_folder_options(CLI::App& command, RunFolderOptions& wanted);

// DIR/runs and those of the folders to merge; the first is not made yet.
RunFolders run_folders(const RunFolderOptions& wanted);

// What is said when a part is done and others are not: 0.
int say_part_done(const std::string& command, int missing, std::size_t runs, const RunFolderOptions& wanted,
                  Streams streams);

}  // namespace wrapgauge
