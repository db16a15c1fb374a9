#pragma once
// How an estimate of a random plan ended, and whether it may end so.

#include <optional>

#include "tests/random_plans/random_plan.hpp"

namespace wrapgauge::random_plans {

enum class End {
  kReached,        // the asked load, balanced
  kRunsAway,       // a named limit point before it: a pressure maximum
  kOverstretched,  // or the end of what a sheet's material is known for
  kFolds,          // or a sheet that folds
  kNotClosed,      // a Problem: not even closed and empty
  kGaveUp,         // a Problem that says the last load that converged
  kOutOfTime,      // stopped from outside
  kOutOfBalance    // a result that fails the audit: must not happen
};

struct Outcome {
  End end = End::kReached;
  std::string message;  // of the Problem, or what is out of balance
  int factorisations = 0;
  double worst_balance = 0.0;  // lateral, axial sum against what touches or could push, whichever is more
  double cut_balance = 0.0;    // share; closed layouts that press more than they could by pushing alone
};

// The largest share that the sums of contact force may be out of balance by, and a cut through the closed
// layout on meshes of 7 to 10 mm.
inline constexpr double kSumTolerance = 1e-3, kCutTolerance = 0.10;

Outcome outcome_of(const RandomPlan& random, const Resources& resources,
                   Progress& progress = silent_progress());

}  // namespace wrapgauge::random_plans
