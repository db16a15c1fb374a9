#include "model/inflation/cholmod_session.hpp"

#include "model/core/said_problem.hpp"

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

Problem CholmodSession::failure(const Phrase& doing, int equations) const {
  const Phrase count = figures_of(equations);
  if (common_.status == CHOLMOD_OUT_OF_MEMORY)
    return said_problem(
        ProblemKind::kProgramFailed,
        Phrase::worded("The sparse solver ran out of memory while %1 %2 equations: close other "
                       "programs, or take a coarser mesh.",
                       {doing, count}));
  if (common_.status == CHOLMOD_TOO_LARGE)
    return bad_input(
        Phrase::worded("The sparse solver stopped while %1 %2 equations: they are more than it can "
                       "number; take a coarser mesh.",
                       {doing, count}));
  return said_problem(
      ProblemKind::kProgramFailed,
      Phrase::worded(
          "The sparse solver failed while %1 %2 equations (CHOLMOD status %3): the fault is in the "
          "program or its libraries, not in the plan; report it with the plan.",
          {doing, count, figures_of(common_.status)}));
}

}  // namespace wrapgauge
