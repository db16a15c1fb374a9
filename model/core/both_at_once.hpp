#pragma once
// Two pieces of work that do not touch each other, on two threads where a second one is free.

#include <cstddef>
#include <functional>

namespace wrapgauge {

// Runs both and returns when both are done. The other one is offered to a helper thread that lives as long as
// the program; if it has not begun when `one` is done, the caller does it himself, so that a busy machine
// costs no waiting. Where no thread can be started the caller does both.
// Nothing is offered while pieces of a larger work (LargeWork) keep every processor busy.
// What either throws comes out here once both have ended; of two, what `one` threw.
void both_at_once(const std::function<void()>& one, const std::function<void()>& other);

// The same for the two halves of a row of `count` things that do not touch each other.
void in_halves(std::size_t count, const std::function<void(std::size_t from, std::size_t to)>& work);

// While it lives, its thread is one of those that a larger work is spread over, such as one of many runs.
class LargeWork {
 public:
  LargeWork();
  ~LargeWork();
  LargeWork(const LargeWork&) = delete;
  LargeWork& operator=(const LargeWork&) = delete;
};

}  // namespace wrapgauge
