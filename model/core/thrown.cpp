#include "model/core/thrown.hpp"

#include <new>
#include <system_error>

#include "model/core/said_problem.hpp"

namespace wrapgauge {
namespace {

Problem no_memory() {
  return said_problem(
      ProblemKind::kProgramFailed,
      Phrase::worded("not enough memory for this: use a coarser mesh or a smaller body, or give "
                     "the program more memory."));
}

Problem own_error() {
  return said_problem(
      ProblemKind::kProgramFailed,
      Phrase::worded("stopped by an error inside the program: please report it with the input."));
}

Problem own_error(const std::exception& error) {
  return said_problem(
      ProblemKind::kProgramFailed,
      Phrase::worded("stopped by an error inside the program (%1): please report it with the input.",
                     {name_of(error.what())}));
}

}  // namespace

Problem problem_of(const std::exception_ptr& thrown) {
  try {
    std::rethrow_exception(thrown);
  } catch (const std::bad_alloc&) {
    return no_memory();
  } catch (const std::system_error& error) {
    // A thread is refused where there is no room for its stack.
    if (error.code() == std::errc::resource_unavailable_try_again ||
        error.code() == std::errc::not_enough_memory)
      return no_memory();
    return own_error(error);
  } catch (const std::exception& error) {
    return own_error(error);
  } catch (...) {
    return own_error();
  }
}

}  // namespace wrapgauge
