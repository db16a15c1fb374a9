#pragma once
// The files an estimate leaves behind.

#include <filesystem>

#include "model/note/summary.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// Before anything long is started: is there a place for the results, and can pictures be drawn?
Result<std::monostate> make_results_folder(const std::filesystem::path& folder);

// Writes summary.json, summary.md, chambers.csv, body.vtp, layout.vtp, body.png and layout.png into `folder`,
// which exists. Same estimate, same bytes.
Result<std::monostate> write_results(const Estimate& estimate, const Summary& summary,
                                     const std::filesystem::path& folder);

}  // namespace wrapgauge
