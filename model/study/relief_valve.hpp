#pragma once
// The rule that relief valves keep, in words.

#include <string>

#include "model/limits/limit_set.hpp"

namespace wrapgauge {

std::string relief_rule_text(const LimitSet& limits, bool goes_round);

}  // namespace wrapgauge
