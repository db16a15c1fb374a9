#pragma once
// Tells the sanitizer of data races of a hand-over between threads that happens where it cannot see.

#if defined(__SANITIZE_THREAD__)
#include <sanitizer/tsan_interface.h>
#endif

namespace wrapgauge {

// A place that one thread leaves things behind at and another picks them up. TBB and Qt are not built for the
// sanitizer of data races, which therefore cannot see that what was done before a loop or an event is done
// before its work, and a loop's work before what comes after it; here it is told. Without that sanitizer
// nothing happens.
class Passage {
 public:
  void leave_behind() {
#if defined(__SANITIZE_THREAD__)
    __tsan_release(this);
#endif
  }
  void pick_up() {
#if defined(__SANITIZE_THREAD__)
    __tsan_acquire(this);
#endif
  }
};

}  // namespace wrapgauge
