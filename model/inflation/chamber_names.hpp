#pragma once
// The chambers of a group in words.

#include <string>

#include "model/inflation/load_path.hpp"

namespace wrapgauge {

// Their names in the layout's order, each in quotes, with commas between.
std::string chambers_of(const InflationSetup& setup, GroupId group);

}  // namespace wrapgauge
