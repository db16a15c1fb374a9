#include "app/command/commands.hpp"
#include "app/command/wrapped_text.hpp"
#include "model/core/clean_text.hpp"

namespace wrapgauge {

ExitCode exit_code_of(ProblemKind kind) {
  switch (kind) {
    case ProblemKind::kNotConverged:
      return kExitNotConverged;
    case ProblemKind::kCancelled:
      return kExitCancelled;
    case ProblemKind::kBadInput:
    case ProblemKind::kProgramFailed:
      break;
  }
  return kExitBadInput;
}

ExitCode exit_code_of(Severity worst) {
  if (worst == Severity::kStop) return kExitStop;
  return worst == Severity::kAboveLimit ? kExitAboveLimit : kExitDone;
}

const char* const kExitCodeHelp =
    "Exit codes, of every command:\n"
    "  0    done, and nothing predicted is above a limit\n"
    "  2    bad input: a file, an option or a value has to be corrected\n"
    "  3    no equilibrium was found, so there are no numbers\n"
    "  4    done, with findings above a limit\n"
    "  5    stopped: the device as planned must not be worn\n"
    "  6    aim: the wanted pressures cannot be reached as drawn; the closest are\n"
    "       shown\n"
    "  130  stopped with Ctrl-C\n";

Result<std::monostate> write_set(ResultFolder& place, const std::vector<ResultPart>& parts, Streams streams) {
  auto written = place.write(parts);
  if (written)
    for (const Phrase& sentence : place.said()) streams.err << wrapped(english(sentence), 2);
  return written;
}

int say_problem(const Problem& problem, Streams streams) {
  streams.err << "wrapgauge: " << clean_text(problem.message) << "\n";
  return exit_code_of(problem.kind);
}

}  // namespace wrapgauge
