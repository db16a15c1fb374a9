#pragma once
// The plan with an advised change made.

#include "app/desk/session/session_state.hpp"

namespace wrapgauge {

// `change`: of the advice for the plan as it stands, with a plan. What stands in the note alone stays as it
// is now: it may have been said since the change was found.
inline Plan made_change(const SessionState& state, const TriedChange& change) {
  Plan plan = *change.plan;
  plan.name = state.plan->name;
  plan.wearers = state.plan->wearers;
  plan.date = state.plan->date;
  return plan;
}

}  // namespace wrapgauge
