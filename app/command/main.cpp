#include <iostream>

#include "app/command/command_line.hpp"
#include "app/job/program_end.hpp"
#include "model/core/freed_memory.hpp"

int main(int count, char** arguments) {
  wrapgauge::end_with_a_sentence("wrapgauge");
  wrapgauge::hold_libraries_to_one_thread(arguments);
  wrapgauge::keep_freed_memory();
  wrapgauge::end_program(
      wrapgauge::run_command_line({arguments + 1, arguments + count}, {std::cout, std::cerr}));
}
