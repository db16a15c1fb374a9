#pragma once
// The files that variants of a plan leave behind.

#include "app/job/result_folder.hpp"
#include "model/study/variants_report.hpp"

namespace wrapgauge {

// variants.csv, variants.json, variants.md, curves.csv, curves.svg, curves.png, variants.svg and
// variants.png. Same answers, same bytes.
Result<ResultPart> make_variant_files(const VaryJob& job, const VaryResult& result);

}  // namespace wrapgauge
