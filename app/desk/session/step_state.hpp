#pragma once
// Where each step of the work stands, in words.

#include <QString>
#include <QStringList>
#include <array>
#include <memory>

#include "app/desk/session/estimate_runner.hpp"
#include "app/desk/session/plan_part.hpp"

namespace wrapgauge {

enum class PlanStep { kBody, kLayout, kWear, kInflation, kLimits, kNote };
inline constexpr std::array<PlanStep, 6> kPlanSteps{PlanStep::kBody,      PlanStep::kLayout, PlanStep::kWear,
                                                    PlanStep::kInflation, PlanStep::kLimits, PlanStep::kNote};
QString step_name(PlanStep step);

struct StepState {
  enum class Kind { kReady, kNeeds, kFindings, kWaiting };
  Kind kind = Kind::kWaiting;
  QString words;         // "ready", "needs a body", "2 findings"
  QStringList findings;  // whole sentences
};

struct StepInputs {
  const Plan& plan;
  const CheckedPlan* checked;   // null: the check of this plan is still running
  const SolvedPlan* solved;     // null: nothing solved yet
  std::vector<PlanPart> stale;  // inputs changed since `solved`
};
StepState step_state(PlanStep step, const StepInputs& inputs);

}  // namespace wrapgauge
