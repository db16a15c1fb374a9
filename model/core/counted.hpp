#pragma once
// "1 strap", "0 straps": a count and what is counted, in the number that it takes.

#include <cstddef>
#include <string>

namespace wrapgauge {

inline std::string counted(std::size_t count, const std::string& one) {
  return std::to_string(count) + " " + one + (count == 1 ? "" : "s");
}

}  // namespace wrapgauge
