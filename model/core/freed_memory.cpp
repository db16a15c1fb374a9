#include "model/core/freed_memory.hpp"

#if defined(__GLIBC__)
#include <malloc.h>
#endif

namespace wrapgauge {

void keep_freed_memory() {
#if defined(__GLIBC__)
  constexpr int kMegabyte = 1 << 20;
  mallopt(M_MMAP_THRESHOLD, 32 * kMegabyte);  // its most; larger blocks go back
  mallopt(M_TRIM_THRESHOLD, 128 * kMegabyte);
#endif
}

}  // namespace wrapgauge
