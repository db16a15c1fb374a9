#include "app/command/exit_code.hpp"

namespace wrapgauge {

ExitCode exit_code_of(ProblemKind kind) {
  switch (kind) {
    case ProblemKind::kNotConverged:
      return kExitNotConverged;
    case ProblemKind::kCancelled:
      return kExitCancelled;
    case ProblemKind::kBadInput:
      break;
  }
  return kExitBadInput;
}

}  // namespace wrapgauge
