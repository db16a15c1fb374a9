#include "tests/random_plans/outcome.hpp"

#include <algorithm>

#include "model/core/number_text.hpp"

namespace wrapgauge::random_plans {
namespace {

// What the chambers could push with: pressure, at least that which the solver measures its residual against,
// on their drawn area. A pad that nothing holds hardly touches the skin: sums of hardly anything say nothing.
Force possible_push(const Estimate& solved) {
  double push_n = 0.0;
  for (const ChamberFigures& chamber : solved.figures.chambers)
    push_n += std::max(300.0, chamber.gauge.si()) * chamber.drawn_area.si();
  return Force(push_n);
}

End end_of(const Problem& problem) {
  if (problem.kind == ProblemKind::kCancelled) return End::kOutOfTime;
  return problem.message.find("the last one that converged has") == std::string::npos ? End::kNotClosed
                                                                                      : End::kGaveUp;
}

End end_of(const LoadPath& path) {
  if (!path.limit_point) return End::kReached;
  switch (path.limit_point->kind) {
    case LimitKind::kRunsAway:
      return End::kRunsAway;
    case LimitKind::kOverstretched:
      return End::kOverstretched;
    case LimitKind::kFolds:
      break;
  }
  return End::kFolds;
}

}  // namespace

Outcome outcome_of(const RandomPlan& random, const Resources& resources, Progress& progress) {
  Outcome outcome;
  const auto solved = estimate(random.plan, random.body, resources, {false, false}, progress);
  if (!solved) {
    outcome.end = end_of(solved.problem());
    outcome.message = solved.problem().message;
    return outcome;
  }
  const Audit& audit = solved->audit;
  outcome.factorisations = solved->path.factorisations;
  const Force push = possible_push(*solved), touch = solved->figures.total_force;
  outcome.worst_balance =
      std::max(audit.lateral_balance, audit.axial_balance) * touch.si() / std::max(touch, push).si();
  outcome.cut_balance = audit.cuts > 0 && touch > push ? audit.cut_balance : 0.0;
  outcome.end = end_of(solved->path);
  if (!(outcome.worst_balance <= kSumTolerance) || !(outcome.cut_balance <= kCutTolerance)) {
    outcome.end = End::kOutOfBalance;
    outcome.message = "sums " + fixed_text(100.0 * outcome.worst_balance, 4) + " %, cut " +
                      fixed_text(100.0 * outcome.cut_balance, 2) + " %";
  }
  return outcome;
}

}  // namespace wrapgauge::random_plans
