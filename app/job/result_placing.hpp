#pragma once
// How a set of results takes the place of the one before it.

#include <filesystem>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <variant>
#include <vector>

#include "app/job/result_folder.hpp"

namespace wrapgauge {

struct Placing {
  std::filesystem::path folder;
  std::vector<ResultFile> files;             // the manifest last
  std::set<std::string> going;               // names that are replaced or go; all others are kept
  std::map<std::string, std::string> aside;  // edited by the user: name and the one it is kept under
};

inline constexpr const char* kStagingInside = ".wrapgauge-new-";
std::string staging_beside(const std::filesystem::path& folder);  // beginning of the name

// What programs that were stopped left in the folder and beside it.
void sweep_stopped(const std::filesystem::path& folder);

// Which of the sets that lie in the folder stay there beside those of `now`: they are added to it. The files
// of the others are added to `going`, but for those the user edited, which are kept.
void sort_old_sets(const ResultManifest& old, ResultManifest& now, Placing& placing,
                   std::vector<Phrase>& said);

// `no_swap` says why the folder is not to be swapped; none: it is, if the system can.
Result<std::monostate> place(const Placing& placing, const std::optional<Phrase>& no_swap,
                             std::vector<Phrase>& said);

}  // namespace wrapgauge
