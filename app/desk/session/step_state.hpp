#pragma once
// Where each step of the work stands, in words.

#include <QString>
#include <QStringList>
#include <array>

#include "app/desk/session/session_state.hpp"

namespace wrapgauge {

enum class PlanStep { kBody, kLayout, kWear, kInflation, kLimits, kNote, kBench };
inline constexpr std::array<PlanStep, 7> kPlanSteps{PlanStep::kBody,      PlanStep::kLayout, PlanStep::kWear,
                                                    PlanStep::kInflation, PlanStep::kLimits, PlanStep::kNote,
                                                    PlanStep::kBench};
QString step_name(PlanStep step);

struct StepState {
  enum class Kind { kReady, kNeeds, kFindings, kWaiting };
  Kind kind = Kind::kWaiting;
  QString words;         // "ready", "needs a body", "2 findings"
  QStringList findings;  // whole sentences
};

StepState step_state(PlanStep step, const SessionState& state);

}  // namespace wrapgauge
