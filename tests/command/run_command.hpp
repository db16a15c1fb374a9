#pragma once
// The command line as a user meets it: exit code and both streams.

#include <sstream>
#include <string>
#include <vector>

#include "app/command/command_line.hpp"

namespace wrapgauge {

struct Answer {
  int code = -1;
  std::string out, err;
};

inline Answer run(const std::vector<std::string>& arguments) {
  std::ostringstream out, err;
  const int code = run_command_line(arguments, {out, err});
  return {code, out.str(), err.str()};
}

}  // namespace wrapgauge
