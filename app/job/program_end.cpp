#include "app/job/program_end.hpp"

#include <sys/resource.h>
#include <unistd.h>

#include <cstdlib>
#include <cstring>
#include <exception>
#include <initializer_list>
#include <iostream>
#include <new>
#include <system_error>

namespace wrapgauge {
namespace {

constexpr int kFailed = 2;  // as for every other reason to give up
constexpr const char* kOneThread = "OPENBLAS_NUM_THREADS";

const char* program_name = "wrapgauge";

// Without asking for memory.
void say(std::initializer_list<const char*> words) {
  for (const char* word : words)
    if (::write(STDERR_FILENO, word, std::strlen(word)) < 0) return;
}

void say_what_was_thrown() noexcept {
  try {
    if (const auto thrown = std::current_exception()) std::rethrow_exception(thrown);
    say({program_name, ": stopped by an error inside the program: please report it with the input.\n"});
  } catch (const std::bad_alloc&) {
    say({program_name,
         ": not enough memory for this: use a coarser mesh or a smaller body, or give the program more "
         "memory.\n"});
  } catch (const std::exception& error) {
    say({program_name, ": stopped by an error inside the program (", error.what(),
         "), which lack of memory can bring about: give it more, or please report it with the input.\n"});
  } catch (...) {
    say({program_name, ": stopped by an error inside the program: please report it with the input.\n"});
  }
}

[[noreturn]] void say_and_leave() {
  say_what_was_thrown();
  ::_exit(kFailed);
}

bool address_space_is_limited() {
  rlimit limit{};
  return ::getrlimit(RLIMIT_AS, &limit) == 0 && limit.rlim_cur != RLIM_INFINITY;
}

}  // namespace

void end_with_a_sentence(const char* program) {
  program_name = program;
  std::set_terminate(say_and_leave);
}

void hold_libraries_to_one_thread(char** arguments) {
  // The library has read its setting before main begins, so that it only counts for a program begun anew.
  if (!address_space_is_limited() || std::getenv(kOneThread) != nullptr) return;
  if (::setenv(kOneThread, "1", 0) == 0) ::execv("/proc/self/exe", arguments);
  // It could not be begun anew: it goes on as it is, with less memory.
}

void end_program(int code) {
  std::cout.flush();
  if (!std::cout) {
    say({program_name, ": what it prints could not be written: make room, or print to another place.\n"});
    if (code == 0) code = kFailed;
  }
  ::_exit(code);
}

}  // namespace wrapgauge
