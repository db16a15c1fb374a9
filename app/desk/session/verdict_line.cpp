#include "app/desk/session/verdict_line.hpp"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "app/desk/session/result_words.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/body/part_rules.hpp"
#include "model/core/beside_limit.hpp"
#include "model/core/number_text.hpp"
#include "model/core/rounded_down.hpp"
#include "model/note/verdict.hpp"
#include "model/study/ceiling_report.hpp"

namespace wrapgauge {
namespace {

using Act = VerdictLine::Act;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(VerdictLine)
};

void lead_to(PlanStep step, VerdictLine& line) {
  line.act = Act::kOpenStep;
  line.act_words = Words::tr("Open %1").arg(step_name(step));
  line.step = step;
}

// The first step, in the order of work, without which nothing can be calculated.
std::optional<PlanStep> missing_step(const SessionState& state) {
  for (const PlanStep step : {PlanStep::kBody, PlanStep::kLayout, PlanStep::kWear, PlanStep::kInflation})
    if (step_state(step, state).kind == StepState::Kind::kNeeds) return step;
  if (state.check && state.check->limits_problem) return PlanStep::kLimits;
  if (state.check && state.check->calibration_problem) return PlanStep::kBench;
  return std::nullopt;
}

VerdictLine line_without_result(const SessionState& state) {
  VerdictLine line;
  if (const auto step = missing_step(state)) {
    line.words =
        Words::tr("Nothing to judge yet: %1 %2.").arg(step_name(*step), step_state(*step, state).words);
    lead_to(*step, line);
  } else if (state.problem && !state.running) {
    line.words = Words::tr("No result: %1").arg(text(*state.problem));
    lead_to(PlanStep::kInflation, line);
  } else {
    line.words = Words::tr("Being calculated: there is no result yet.");
  }
  return line;
}

// The list of findings is sorted; what the others rest on may stand before the worst.
void take_worst(const Summary& summary, VerdictLine& line) {
  line.words = text(verdict(summary));
  line.severity = summary.worst;
  const Finding* worst = nullptr;
  for (const Finding& finding : summary.findings)
    if (finding.measured &&
        (!worst || finding.severity > worst->severity ||
         (finding.severity == worst->severity && finding.share_of_limit > worst->share_of_limit)))
      worst = &finding;
  if (!worst || worst->severity < summary.worst) return;  // a hazard is graver, and has no share
  line.share = said_share(*worst);
  line.share_words = text(percent_beside(*line.share));
}

QString setting_words(const CeilingInlet& inlet) {
  if (inlet.pushed || inlet.by_volume)
    return figures_text(fixed_text(rounded_down(inlet.pushed.value_or(inlet.volume) / mL, 0.1), 1)) +
           QStringLiteral(" mL");
  return figures_text(setting_text(inlet.gauge));
}

QString settings_words(const std::vector<CeilingInlet>& inlets) {
  if (inlets.size() == 1) return setting_words(inlets.front());
  QStringList words;
  for (const CeilingInlet& inlet : inlets)
    words.push_back(QString::fromStdString(inlet.inlet) + QChar(' ') + setting_words(inlet));
  return words.join(QStringLiteral(", "));
}

QString ceiling_in_short(const InletCeiling& found) {
  if (found.inlets.empty())
    return found.at.inflation <= 0.0 ? Words::tr("none: above a limit while deflated") : Words::tr("none");
  const QString of_plan = QString::fromStdString(percent_text(found.at.inflation));
  if (found.stop == CeilingStop::kWithin)
    return Words::tr("no limit met up to %1, %2 of the plan").arg(settings_words(found.inlets), of_plan);
  const QString words = Words::tr("%1: %2 of the plan").arg(settings_words(found.inlets), of_plan);
  return found.confirmed() ? words : Words::tr("%1, not confirmed").arg(words);
}

QString all_words_of(const Ceiling& ceiling) {
  QStringList words;
  for (const std::string& sentence : ceiling_words(ceiling))
    words.push_back(QString::fromStdString(sentence));
  return words.join(QChar('\n'));
}

// Whether the plan stands where an earlier one was to be set down to.
bool is_set_down(const SessionState& state) {
  const FoundCeiling& newest = state.newest_ceiling;
  if (!newest.plan || !newest.ceiling) return false;
  const auto set = plan_at_ceiling(*newest.plan, newest.ceiling->together);
  return set && changed_parts(*set, *state.plan).empty();
}

void see_why(VerdictLine& line) {
  lead_to(PlanStep::kLimits, line);
  line.act_words = Words::tr("See why");
}

bool is_running(const SessionState& state, RunKind kind) {
  return state.running && state.running->kind == kind;
}

// Where the inflation cannot be set down, something else has to change.
void look_for_changes(const SessionState& state, VerdictLine& line) {
  if (line.severity < Severity::kAboveLimit) return see_why(line);
  lead_to(PlanStep::kLimits, line);
  line.act_words = Words::tr("What to change");
  if (!state.advice()) line.act = Act::kFindChanges;
}

void take_highest(const SessionState& state, VerdictLine& line) {
  const auto ceiling = state.ceiling();
  if (is_running(state, RunKind::kCeiling)) {
    line.highest = Words::tr("being looked for: %1 %").arg(std::floor(100.0 * state.running->fraction));
    line.act = Act::kCancel;
    line.act_words = Words::tr("Cancel");
  } else if (ceiling) {
    line.highest = ceiling_in_short(ceiling->together);
    line.highest_help = all_words_of(*ceiling);
    if (!plan_set_down(state)) return look_for_changes(state, line);
    line.act = Act::kSetHighest;
    line.act_words = Words::tr("Set it");
  } else if (is_set_down(state)) {
    line.highest = Words::tr("%1: the plan is set to it")
                       .arg(settings_words(state.newest_ceiling.ceiling->together.inlets));
    line.highest_help = all_words_of(*state.newest_ceiling.ceiling);
    see_why(line);
  } else {
    line.highest = Words::tr("not looked for yet");
    line.act = Act::kFindHighest;
    line.act_words = Words::tr("Find the highest");
    line.act_enabled = state.can_be_solved();
  }
}

bool is_test_object(const Summary& summary) {
  return summary.part && !is_worn(*summary.part);
}

}  // namespace

std::optional<Plan> plan_set_down(const SessionState& state) {
  const auto ceiling = state.ceiling();
  if (!ceiling || ceiling->together.at.inflation >= 1.0) return std::nullopt;
  return plan_at_ceiling(*state.plan, ceiling->together);
}

VerdictLine verdict_line(const SessionState& state) {
  if (!state.solved || missing_step(state)) return line_without_result(state);
  const Summary& summary = *state.solved->summary;
  VerdictLine line;
  take_worst(summary, line);
  line.made_of = made_of_words(state);
  line.out_of_date = !state.stale.empty();
  if (is_test_object(summary))
    lead_to(PlanStep::kLimits, line);
  else
    take_highest(state, line);
  if (is_running(state, RunKind::kAdvice)) {
    line.act = Act::kCancel;
    line.act_words = Words::tr("Cancel");
    line.act_enabled = true;
  }
  return line;
}

}  // namespace wrapgauge
