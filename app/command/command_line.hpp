#pragma once
#include <string>
#include <vector>

#include "app/command/commands.hpp"

namespace wrapgauge {

// `arguments` without the program's name. Never throws; returns an ExitCode.
int run_command_line(std::vector<std::string> arguments, Streams streams);

}  // namespace wrapgauge
