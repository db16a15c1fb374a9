#pragma once
// The limit set and the refused sources that the program ships, whatever folder of tables it was given.

#include "model/limits/comparison.hpp"
#include "model/limits/limit_set.hpp"

namespace wrapgauge {

Result<LimitSet> shipped_limit_set();
Result<Comparisons> shipped_comparisons();

}  // namespace wrapgauge
