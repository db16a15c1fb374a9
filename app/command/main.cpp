#include <iostream>

#include "app/command/command_line.hpp"

int main(int count, char** arguments) {
  return wrapgauge::run_command_line({arguments + 1, arguments + count}, {std::cout, std::cerr});
}
