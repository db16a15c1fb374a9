#include <iostream>

#include "app/command/command_line.hpp"
#include "model/core/freed_memory.hpp"

int main(int count, char** arguments) {
  wrapgauge::keep_freed_memory();
  return wrapgauge::run_command_line({arguments + 1, arguments + count}, {std::cout, std::cerr});
}
