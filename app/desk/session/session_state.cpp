#include "app/desk/session/session_state.hpp"

namespace wrapgauge {
namespace {

bool answers(const std::shared_ptr<const Plan>& asked, const std::shared_ptr<const Plan>& plan) {
  return asked && (asked == plan || changed_parts(*asked, *plan).empty());
}

}  // namespace

std::shared_ptr<const Ceiling> SessionState::ceiling() const {
  return answers(newest_ceiling.plan, plan) ? newest_ceiling.ceiling : nullptr;
}

std::shared_ptr<const Aim> SessionState::aim() const {
  return answers(newest_aim.plan, plan) ? newest_aim.aim : nullptr;
}

std::shared_ptr<const Advice> SessionState::advice() const {
  return answers(newest_advice.plan, plan) ? newest_advice.advice : nullptr;
}

// What a fit was made of does not count what it is kept as.
std::shared_ptr<const BenchResult> SessionState::fit() const {
  if (!newest_fit.plan) return nullptr;
  Plan bare = *newest_fit.plan, now = *plan;
  bare.calibration.reset();
  now.calibration.reset();
  return changed_parts(bare, now).empty() ? newest_fit.fit : nullptr;
}

bool SessionState::differs_in_work(const SessionState& before) const {
  SessionState as_far = before;
  as_far.running = running;
  return as_far != *this;
}

}  // namespace wrapgauge
