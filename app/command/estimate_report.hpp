#pragma once
// What `estimate` says on the terminal: the verdict, the chambers, one card a finding, where the files are.

#include <filesystem>
#include <string>

#include "model/note/summary.hpp"

namespace wrapgauge {

// 80 columns. `full`: the whole sentences with their sources, notes and comparisons too.
std::string estimate_report(const Summary& summary, const std::filesystem::path& folder, bool full);

}  // namespace wrapgauge
