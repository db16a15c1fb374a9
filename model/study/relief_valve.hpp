#pragma once
// How high a mechanical relief valve may be set, should the supply's own valve stick open.

#include <string>

#include "model/limits/limit_set.hpp"

namespace wrapgauge {

std::string relief_words(const ReliefRule& rule, Pressure cap);

}  // namespace wrapgauge
