#pragma once
// The answer to an aim in words and figures.

#include <string>
#include <vector>

#include "model/study/aim.hpp"

namespace wrapgauge {

std::vector<std::string> aim_words(const Aim& aim);  // one sentence each
std::string aim_json(const Aim& aim, const std::string& plan, const std::string& inputs_hash);

}  // namespace wrapgauge
