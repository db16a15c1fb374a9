#pragma once
// The files an estimate leaves behind.

#include <filesystem>

#include "app/job/result_folder.hpp"
#include "model/note/summary.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// summary.json, summary.md, chambers.csv, body.vtp, layout.vtp, body.png and layout.png. Same estimate, same
// bytes.
Result<ResultPart> make_results(const Estimate& estimate, const Summary& summary);

// Written into `folder` all together, with a manifest. What ResultFolder said of it.
Result<std::vector<Phrase>> write_results(const Estimate& estimate, const Summary& summary,
                                          const std::filesystem::path& folder);

}  // namespace wrapgauge
