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

bool SessionState::differs_in_work(const SessionState& before) const {
  SessionState as_far = before;
  as_far.running = running;
  return as_far != *this;
}

}  // namespace wrapgauge
