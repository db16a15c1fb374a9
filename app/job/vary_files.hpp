#pragma once
// The files that variants of a plan leave behind.

#include <filesystem>

#include "model/study/variants_report.hpp"

namespace wrapgauge {

// Writes variants.csv, variants.json, variants.md, curves.csv, curves.svg, curves.png, variants.svg and
// variants.png into `folder`, which exists. Same answers, same bytes.
Result<std::monostate> write_variants(const VaryJob& job, const VaryResult& result,
                                      const std::filesystem::path& folder);

}  // namespace wrapgauge
