#pragma once
// Two pieces of work that do not touch each other, on two threads where a second one is free.

#include <functional>

namespace wrapgauge {

// Runs both and returns when both are done. The other one is offered to a helper thread that lives as long as
// the program; if it has not begun when `one` is done, the caller does it himself, so that a busy machine
// costs no waiting.
void both_at_once(const std::function<void()>& one, const std::function<void()>& other);

}  // namespace wrapgauge
