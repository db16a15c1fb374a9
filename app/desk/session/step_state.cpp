#include "app/desk/session/step_state.hpp"

#include <QCoreApplication>

#include "app/desk/session/mend_words.hpp"
#include "app/desk/session/text.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/body/part_rules.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

using Kind = StepState::Kind;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(StepState)
};

StepState ready() {
  return {Kind::kReady, Words::tr("ready"), {}};
}
StepState waiting() {
  return {Kind::kWaiting, Words::tr("being checked"), {}};
}
StepState needs(const QString& words, QStringList findings = {}) {
  return {Kind::kNeeds, words, std::move(findings)};
}
StepState with_findings(QStringList findings) {
  const int count = static_cast<int>(findings.size());
  return {Kind::kFindings, count == 1 ? Words::tr("1 finding") : Words::tr("%1 findings").arg(count),
          std::move(findings)};
}

// A body that was read, has its part and is still not to be used has tissue depths that do not belong to it.
QString body_need_words(const CheckedPlan& checked) {
  if (checked.part_in_doubt) return Words::tr("needs the part of the person");
  if (!checked.body_need) return Words::tr("needs another tissue depth");
  switch (*checked.body_need) {
    case BodyNeed::kOtherUnit:
      return Words::tr("needs another unit");
    case BodyNeed::kMending:
      return Words::tr("needs repair");
    case BodyNeed::kOtherMending:
      return Words::tr("needs other steps of repair");
    case BodyNeed::kOtherMeasures:
      return Words::tr("needs other measures");
    case BodyNeed::kOtherFile:
      break;
  }
  return Words::tr("needs another file");
}

StepState body_state(const SessionState& in) {
  if (!has_body(*in.plan)) return needs(Words::tr("needs a body"));
  if (!in.check) return waiting();
  if (in.check->body_problem) return needs(body_need_words(*in.check), {body_problem_words(*in.check)});
  return ready();
}

StepState layout_state(const SessionState& in) {
  if (!has_layout(*in.plan)) return needs(Words::tr("needs a layout"));
  if (!in.check) return waiting();
  QStringList findings;
  for (const Problem& problem : in.check->layout_problems) findings.push_back(text(problem));
  if (!findings.empty())
    return needs(findings.size() == 1 ? Words::tr("needs correcting in 1 place")
                                      : Words::tr("needs correcting in %1 places").arg(findings.size()),
                 findings);
  for (const CastingFinding& finding : in.check->casting) findings.push_back(text(finding.sentence));
  return findings.empty() ? ready() : with_findings(findings);
}

StepState wear_state(const SessionState& in) {
  if (!has_body(*in.plan) || !has_layout(*in.plan)) return needs(Words::tr("needs body and layout"));
  if (!in.check) return waiting();
  if (in.check->wear_problem) return needs(Words::tr("needs another place"), {text(*in.check->wear_problem)});
  return in.check->prepared ? ready() : needs(Words::tr("needs body and layout"));
}

StepState inflation_state(const SessionState& in) {
  if (!has_layout(*in.plan)) return needs(Words::tr("needs a layout"));
  if (!in.check) return waiting();
  if (in.check->unfed.empty()) return ready();
  QStringList names;
  for (const std::string& name : in.check->unfed) names.push_back(text(name));
  return needs(Words::tr("needs a pressure or volume for %1").arg(names.join(QStringLiteral(", "))));
}

QStringList findings_of(const Estimate& estimate) {
  QStringList sentences;
  for (const Finding& finding : estimate.findings)
    if (finding.severity != Severity::kNote) sentences.push_back(text(finding.sentence));
  for (const Hazard& hazard : estimate.hazards)
    if (hazard.severity != Severity::kNote)
      sentences.push_back(text(in_a_row({hazard.name, hazard.sentence}, ": ")));
  return sentences;
}

StepState limits_state(const SessionState& in) {
  if (in.check && in.check->limits_problem)
    return needs(Words::tr("needs another limit set"), {text(*in.check->limits_problem)});
  if (!in.solved) return needs(Words::tr("needs an estimate"));
  if (!in.stale.empty()) return needs(Words::tr("needs a new estimate"));
  const QStringList findings = findings_of(*in.solved->estimate);
  return findings.empty() ? StepState{Kind::kReady, Words::tr("nothing found above a limit"), {}}
                          : with_findings(findings);
}

StepState note_state(const SessionState& in) {
  if (!in.solved || in.solved->fineness != Fineness::kStandard || !in.stale.empty())
    return needs(Words::tr("needs the final estimate"));
  const Summary& summary = *in.solved->summary;
  if (summary.limit_point)
    return needs(Words::tr("needs an inflation that can be reached"), {text(*summary.limit_point)});
  if (summary.part && !is_worn(*summary.part)) return needs(Words::tr("needs a part that is worn"));
  return ready();
}

// Nothing waits for it: without readings the model's usual factor holds.
StepState bench_state(const SessionState& in) {
  if (!has_body(*in.plan) || !has_layout(*in.plan)) return needs(Words::tr("needs body and layout"));
  if (!in.check) return waiting();
  if (in.check->calibration_problem)
    return needs(Words::tr("needs a new fit"), {text(*in.check->calibration_problem)});
  if (!in.check->job) return waiting();
  const LimitSet& limits = in.check->job->resources.limits;
  const QString factor = figures_text(number_text(limits.model_factor, 3));
  if (!limits.calibration) return {Kind::kWaiting, Words::tr("not calibrated: factor %1").arg(factor), {}};
  return {Kind::kReady,
          Words::tr("calibrated on %1 readings: factor %2").arg(limits.calibration->readings).arg(factor),
          {}};
}

}  // namespace

QString step_name(PlanStep step) {
  const QString names[] = {Words::tr("Body"),      Words::tr("Layout"), Words::tr("Wear"),
                           Words::tr("Inflation"), Words::tr("Limits"), Words::tr("Note"),
                           Words::tr("Bench")};
  return names[static_cast<std::size_t>(step)];
}

StepState step_state(PlanStep step, const SessionState& state) {
  constexpr StepState (*kJudges[])(const SessionState&) = {
      body_state, layout_state, wear_state, inflation_state, limits_state, note_state, bench_state};
  return kJudges[static_cast<std::size_t>(step)](state);
}

}  // namespace wrapgauge
