#pragma once
// What stands first in the window, at every moment: the worst place and its share of the limit, how far the
// device may be inflated within the limits, and the one thing to do next; or what is missing for that.

#include <QString>
#include <optional>

#include "app/desk/session/step_state.hpp"
#include "model/limits/finding.hpp"

namespace wrapgauge {

struct VerdictLine {
  enum class Act { kNone, kFindHighest, kSetHighest, kFindChanges, kOpenStep, kCancel };

  QString words;                     // the verdict, or one sentence about what is missing
  std::optional<Severity> severity;  // of the worst; none: there is no result
  std::optional<double> share;       // of its limit, after the model factor; none: the worst has no limit
  QString share_words;               // "112 %"
  QString made_of;                   // preview or not, out of date or not
  bool out_of_date = false;
  QString highest;       // "2.1 kPa (15 mmHg), 70 % of the plan", "not looked for yet"; empty: no result
  QString highest_help;  // all that was found, in whole sentences
  Act act = Act::kNone;
  QString act_words;
  PlanStep step = PlanStep::kBody;  // that kOpenStep opens
  bool act_enabled = true;

  bool operator==(const VerdictLine&) const = default;
};

VerdictLine verdict_line(const SessionState& state);

// The plan at the highest inflation within the limits, where that was found for the plan as it stands and
// lies below it.
std::optional<Plan> plan_set_down(const SessionState& state);

}  // namespace wrapgauge
