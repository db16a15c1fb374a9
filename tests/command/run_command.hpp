#pragma once
// The command line as a user meets it: exit code and both streams.

#include <sstream>
#include <string>
#include <vector>

#include "app/command/command_line.hpp"

namespace wrapgauge {

inline std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

// Runs of spaces and line breaks as one space, so that wrapped text compares.
inline std::string unwrapped(const std::string& text) {
  std::istringstream in(text);
  std::string out;
  for (std::string word; in >> word;) out += (out.empty() ? "" : " ") + word;
  return out;
}

struct Answer {
  int code = -1;
  std::string out, err;

  std::string said() const { return unwrapped(out); }
};

inline Answer run(const std::vector<std::string>& arguments) {
  std::ostringstream out, err;
  const int code = run_command_line(arguments, {out, err});
  return {code, out.str(), err.str()};
}

}  // namespace wrapgauge
