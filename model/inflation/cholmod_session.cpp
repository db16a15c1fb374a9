#include "model/inflation/cholmod_session.hpp"

#include <string>

namespace wrapgauge {

CholmodSession::CholmodSession() {
  cholmod_start(&common_);
  common_.print = 0;
  common_.nmethods = 1;
  common_.method[0].ordering = CHOLMOD_GIVEN;
  common_.postorder = 1;
  common_.supernodal = CHOLMOD_SUPERNODAL;
  common_.quick_return_if_not_posdef = 1;
  // METIS tells nobody that it ran out of memory: CHOLMOD looks first whether there is enough for it.
  common_.metis_memory = 2.0;
}

CholmodSession::~CholmodSession() {
  cholmod_finish(&common_);
}

Problem CholmodSession::failure(std::string_view doing, int equations) const {
  const std::string what = std::string(doing) + " " + std::to_string(equations) + " equations";
  if (common_.status == CHOLMOD_OUT_OF_MEMORY)
    return {ProblemKind::kProgramFailed,
            "The sparse solver ran out of memory while " + what +
                ": close other programs, or take a coarser mesh.",
            {}};
  if (common_.status == CHOLMOD_TOO_LARGE)
    return bad_input("The sparse solver stopped while " + what +
                     ": they are more than it can number; take a coarser mesh.");
  return {ProblemKind::kProgramFailed,
          "The sparse solver failed while " + what + " (CHOLMOD status " + std::to_string(common_.status) +
              "): the fault is in the program or its libraries, not in the plan; report it with the plan.",
          {}};
}

}  // namespace wrapgauge
