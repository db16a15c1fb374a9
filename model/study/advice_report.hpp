#pragma once
// Advice in words and figures.

#include <string>
#include <vector>

#include "model/study/advice.hpp"

namespace wrapgauge {

// One sentence or a few each, the verdict first. `plan_file`: as the reader would name it to `ceiling`.
std::vector<std::string> advice_words(const Advice& advice, const std::string& plan_file);

// Same advice, same bytes. `plan`, `inputs_hash`: what it was found for.
std::string advice_json(const Advice& advice, const std::string& plan, const std::string& inputs_hash,
                        const std::string& plan_file);
// Every change that was tried, with what became of it.
std::string advice_markdown(const Advice& advice, const std::string& plan, const std::string& plan_file);

// The plan as it is, on the mesh that the change was solved on: nothing else may be compared with it.
const ChangeOutcome& before_of(const Advice& advice, const TriedChange& change);

std::string_view fate_text(ChangeFate fate);  // "advised", "not enough", ...

}  // namespace wrapgauge
