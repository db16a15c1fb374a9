#pragma once
// What an exception that reached the door of a program or of a thread says to its user.

#include <exception>

#include "model/core/result.hpp"

namespace wrapgauge {

// `thrown` holds an exception. No memory, or no room for one more thread, is told from an error in the
// program.
Problem problem_of(const std::exception_ptr& thrown);

}  // namespace wrapgauge
