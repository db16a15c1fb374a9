#pragma once
// The files an estimate leaves behind.

#include <filesystem>

#include "model/note/summary.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// Writes summary.json, summary.md, chambers.csv, body.vtp, layout.vtp, body.png and layout.png into `folder`,
// which is made if it is missing. Same estimate, same bytes.
Result<std::monostate> write_results(const Estimate& estimate, const Summary& summary,
                                     const std::filesystem::path& folder);

}  // namespace wrapgauge
