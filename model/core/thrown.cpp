#include "model/core/thrown.hpp"

#include <new>
#include <system_error>

namespace wrapgauge {
namespace {

Problem no_memory() {
  return {
      ProblemKind::kProgramFailed,
      "not enough memory for this: use a coarser mesh or a smaller body, or give the program more memory.",
      {}};
}

Problem own_error(const std::string& what) {
  return {ProblemKind::kProgramFailed,
          "stopped by an error inside the program" + what + ": please report it with the input.",
          {}};
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
    return own_error(std::string(" (") + error.what() + ")");
  } catch (const std::exception& error) {
    return own_error(std::string(" (") + error.what() + ")");
  } catch (...) {
    return own_error("");
  }
}

}  // namespace wrapgauge
