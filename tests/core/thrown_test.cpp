#include "model/core/thrown.hpp"

#include <gtest/gtest.h>

#include <new>
#include <stdexcept>
#include <system_error>

namespace wrapgauge {
namespace {

template <class Exception>
std::string message_of(const Exception& exception) {
  const Problem problem = problem_of(std::make_exception_ptr(exception));
  EXPECT_EQ(problem.kind, ProblemKind::kProgramFailed);
  EXPECT_TRUE(is_no_answer(problem.kind));
  return problem.message;
}

constexpr const char* kNoMemory =
    "not enough memory for this: use a coarser mesh or a smaller body, or give the program more memory.";

TEST(Thrown, SaysThatMemoryIsMissingAlsoWhenItIsForAThread) {
  EXPECT_EQ(message_of(std::bad_alloc()), kNoMemory);
  EXPECT_EQ(message_of(std::bad_array_new_length()), kNoMemory);
  EXPECT_EQ(message_of(std::system_error(std::make_error_code(std::errc::resource_unavailable_try_again))),
            kNoMemory);
  EXPECT_EQ(message_of(std::system_error(std::make_error_code(std::errc::not_enough_memory))), kNoMemory);
}

TEST(Thrown, SaysWhatAnyOtherExceptionSays) {
  EXPECT_EQ(message_of(std::out_of_range("row 7")),
            "stopped by an error inside the program (row 7): please report it with the input.");
  const std::system_error other(std::make_error_code(std::errc::permission_denied), "lock");
  EXPECT_NE(message_of(other).find("(lock: Permission denied)"), std::string::npos) << message_of(other);
  EXPECT_EQ(message_of(7), "stopped by an error inside the program: please report it with the input.");
}

}  // namespace
}  // namespace wrapgauge
