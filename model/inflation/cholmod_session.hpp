#pragma once
// CHOLMOD's state for one user of it, and what to say when one of its calls fails.

#include <cholmod.h>

#include "model/core/result.hpp"

namespace wrapgauge {

class CholmodSession {
 public:
  CholmodSession();
  ~CholmodSession();
  CholmodSession(const CholmodSession&) = delete;
  CholmodSession& operator=(const CholmodSession&) = delete;

  cholmod_common& common() { return common_; }
  // The last call was cut short; a matrix that is not definite is an answer and no failure.
  bool failed() const { return common_.status < CHOLMOD_OK; }
  // One sentence on the call that failed while `doing` ("ordering", "factoring") so many equations.
  Problem failure(const Phrase& doing, int equations) const;

 private:
  cholmod_common common_{};
};

}  // namespace wrapgauge
