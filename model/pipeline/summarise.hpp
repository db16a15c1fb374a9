#pragma once
#include "model/note/summary.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// An estimate in words and figures. `inputs`: the files it came from.
Summary summarise(const Plan& plan, const Estimate& estimate, std::vector<InputFile> inputs);

}  // namespace wrapgauge
