#pragma once
#include "model/core/result.hpp"
#include "model/limits/finding.hpp"

namespace wrapgauge {

// What `wrapgauge` returns to the shell; documented in --help and docs/command-line.md.
enum ExitCode : int {
  kExitDone = 0,          // done, nothing predicted above a limit
  kExitBadInput = 2,      // a file, an option or a value has to be mended
  kExitNotConverged = 3,  // no equilibrium was found, so there are no numbers
  kExitAboveLimit = 4,    // done, with findings above a limit
  kExitStop = 5,          // figures written, but the device as planned must not be worn
  kExitNotReached = 6,    // aim: the wanted pressures cannot be reached as drawn; the nearest are shown
  kExitCancelled = 130,   // stopped with Ctrl-C
};

ExitCode exit_code_of(ProblemKind kind);
ExitCode exit_code_of(Severity worst);

}  // namespace wrapgauge
