#pragma once
// How a program of ours begins and ends where memory is short: with one sentence and an exit code, never with
// a signal or a thread that turns for ever.

namespace wrapgauge {

// First thing in main: an exception that nothing can catch (thrown in a thread of a library, or by what must
// not throw) ends the program with one sentence and exit code 2. `program` lives as long as the program.
void end_with_a_sentence(const char* program);

// Second thing in main: where the system grants only so much address space (`ulimit -v`), starts the program
// anew with OpenBLAS held to one thread. Each further thread of it takes 130 MB and more although nothing
// here gives it work, and asks again without end for memory that it does not get.
void hold_libraries_to_one_thread(char** arguments);

// Last thing in main: what was printed goes out, and nothing that a library does at the end of a program
// (such as waiting for its threads) can keep this one. Exit code 2 where what was printed could not be
// written.
[[noreturn]] void end_program(int code);

}  // namespace wrapgauge
