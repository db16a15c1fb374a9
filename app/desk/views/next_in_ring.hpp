#pragma once
#include <cstddef>

namespace wrapgauge {

// The place `by` further than `at` in a ring of `count`; none is chosen yet when `at` is `count`: then the
// first of them, or the last when going back. `count` > 0, `by` +1 or -1.
inline std::size_t next_in_ring(std::size_t at, std::size_t count, int by) {
  if (at == count) return by > 0 ? 0 : count - 1;
  return (at + (by > 0 ? 1 : count - 1)) % count;
}

}  // namespace wrapgauge
