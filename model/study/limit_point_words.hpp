#pragma once
#include <string>

#include "model/inflation/load_path.hpp"

namespace wrapgauge {

// Why a path ended below the inflation asked for, in one sentence.
std::string limit_point_words(const LimitPoint& limit_point);

}  // namespace wrapgauge
