#pragma once
#include <string_view>

namespace wrapgauge {
// The program version that every result names.
std::string_view program_version();
}  // namespace wrapgauge
