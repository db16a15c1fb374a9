#pragma once
// Two pieces of work that do not touch each other, on two threads.

#include <thread>

namespace wrapgauge {

template <class One, class Other>
void both_at_once(const One& one, const Other& other) {
  std::thread helper(other);
  one();
  helper.join();
}

}  // namespace wrapgauge
