#include "model/study/advice_report.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "model/core/counted.hpp"
#include "model/core/markdown_text.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/version.hpp"
#include "model/study/ceiling_report.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kShownNotEnough = 3;

std::string edge_text(Length edge) {
  return fixed_text(edge / mm, 1) + " mm";
}

std::vector<const LimitMark*> above_marks(const ChangeOutcome& outcome) {
  std::vector<const LimitMark*> above;
  for (const LimitMark& mark : outcome.marks)
    if (mark.severity >= Severity::kAboveLimit) above.push_back(&mark);
  std::stable_sort(above.begin(), above.end(),
                   [](const LimitMark* a, const LimitMark* b) { return a->share > b->share; });
  return above;
}

std::string mark_text(const LimitMark& mark) {
  const bool says_it = mark.what == "hazard" || mark.what == mark.where;
  const std::string place = "'" + mark.where + "'" + (says_it ? "" : " (" + mark.what + ")");
  return mark.share > 0.0 ? place + " at " + percent_text(mark.share) + " of its limit"
                          : place + " above a limit";
}

std::string above_text(const ChangeOutcome& outcome) {
  std::string text;
  for (const LimitMark* mark : above_marks(outcome)) text += (text.empty() ? "" : ", ") + mark_text(*mark);
  return text;
}

std::string nearest_text(const ChangeOutcome& outcome) {
  if (outcome.where.empty()) return "no place comes near a limit";
  return "'" + outcome.where + "' is nearest, at " + percent_text(outcome.share) + " of its limit";
}

// "Mean contact pressure: 'left' 2.1 kPa (16 mmHg) to 1.2 kPa (9 mmHg)", of chambers where it shows.
std::string means_change_text(const Advice& advice, const TriedChange& change) {
  const ChangeOutcome& before = before_of(advice, change);
  std::string text;
  for (std::size_t c = 0; c < advice.chambers.size() && c < change.outcome.mean.size(); ++c) {
    const std::string from = pressure_text(before.mean[c]), to = pressure_text(change.outcome.mean[c]);
    if (from != to)
      text += (text.empty() ? "" : "; ") + ("'" + advice.chambers[c] + "' " + from + " to " + to);
  }
  return text.empty() ? "The chambers' mean contact pressure does not change in the digits shown."
                      : "Mean contact pressure: " + text + ".";
}

std::vector<const TriedChange*> with_fate(const Advice& advice, ChangeFate fate) {
  std::vector<const TriedChange*> found;
  for (const TriedChange& change : advice.changes)
    if (change.fate == fate) found.push_back(&change);
  return found;
}

std::string ended(std::string sentence) {
  if (!sentence.empty() && sentence.back() != '.') sentence += '.';
  return sentence;
}

std::string advised_verdict(std::size_t count, Length edge) {
  return counted(count, "single change") + (count == 1 ? " brings" : " bring") +
         " the plan within its limits, " + (count == 1 ? "" : "each ") +
         "solved on the plan's own mesh (edge " + edge_text(edge) + "), relief valves included.";
}

std::string planned_text(const Advice& advice) {
  return "As planned: " + above_text(advice.plan) + ".";
}

void say_advised(const Advice& advice, const std::vector<const TriedChange*>& advised,
                 std::vector<std::string>& words) {
  words.push_back(advised_verdict(advised.size(), advice.edge));
  words.push_back(planned_text(advice));
  for (std::size_t c = 0; c < advised.size(); ++c)
    words.push_back(std::to_string(c + 1) + ". " + english(advised[c]->words) + ". Then " +
                    nearest_text(advised[c]->outcome) + ", and nothing else gets worse. " +
                    means_change_text(advice, *advised[c]));
}

void say_none(const Advice& advice, const std::string& plan_file, std::vector<std::string>& words) {
  words.push_back("No single change that was tried brings the plan within its limits.");
  words.push_back(planned_text(advice));
  words.push_back("To go on: `wrapgauge ceiling " + plan_file +
                  "` finds the highest inflation within the limits, or says what is above one before "
                  "anything is inflated; change more than one thing, and advise again.");
}

void say_not_enough(const Advice& advice, std::vector<std::string>& words) {
  const auto near = with_fate(advice, ChangeFate::kNotEnough);
  for (std::size_t c = 0; c < std::min(near.size(), kShownNotEnough); ++c)
    words.push_back((c == 0 ? "Better, but not enough alone: " : "Not enough either: ") +
                    english(near[c]->words) + ". Still above: " + above_text(near[c]->outcome) +
                    " (mesh edge " + edge_text(near[c]->edge) + ").");
  for (const TriedChange* change : with_fate(advice, ChangeFate::kNotThere))
    words.push_back("Within the limits on a mesh of " + edge_text(advice.screening_edge) +
                    " only, so it is not advised: " + english(change->words) +
                    ". On the plan's own mesh: " + ended(change->reason));
}

std::string rest_text(const Advice& advice) {
  std::string text;
  const auto count = [&](ChangeFate fate, const std::string& what) {
    if (const auto changes = with_fate(advice, fate); !changes.empty())
      text += (text.empty() ? "" : "; ") + std::to_string(changes.size()) + " " + what;
  };
  count(ChangeFate::kNotSolved, "within on the preview mesh but not solved on the plan's own");
  count(ChangeFate::kWorse, "would make something else worse");
  count(ChangeFate::kNoHelp, "would hardly help");
  count(ChangeFate::kNoAnswer, "gave no answer");
  count(ChangeFate::kLeftOut, "could not be made");
  return text.empty() ? text : "Other changes tried: " + text + ".";
}

std::string advice_basis(const Advice& advice) {
  return "Changes are tried one at a time on a mesh of " + edge_text(advice.screening_edge) +
         " and ranked by how little they move the chambers' mean contact pressure. Predicted pressures "
         "count " +
         number_text(advice.model_factor, 3) +
         " times, the model factor. Predicted by an uncalibrated model: within the limits is no "
         "evidence that it does no harm. Not a medical device; measure on a bench before anyone wears it, "
         "and "
         "ask a clinician.";
}

double figure(double value) {
  return std::round(value * 1e4) / 1e4;
}

Json marks_above_json(const ChangeOutcome& outcome) {
  Json list = Json::array();
  for (const LimitMark* mark : above_marks(outcome))
    list.push_back({{"where", mark->where},
                    {"what", mark->what},
                    {"severity", severity_text(mark->severity)},
                    {"share_of_limit", figure(mark->share)},
                    {"sentence", mark->sentence}});
  return list;
}

Json state_json(const Advice& advice, const ChangeOutcome& outcome) {
  Json json{{"within_limits", outcome.within},
            {"share_of_limit", figure(outcome.share)},
            {"nearest", outcome.where},
            {"above", marks_above_json(outcome)},
            {"mean_kPa", Json::object()}};
  for (std::size_t c = 0; c < advice.chambers.size() && c < outcome.mean.size(); ++c)
    json["mean_kPa"][advice.chambers[c]] = figure(outcome.mean[c] / kPa);
  return json;
}

Json tried_json(const Advice& advice, const TriedChange& change) {
  Json json{{"words", english(change.words)}, {"fate", fate_text(change.fate)}, {"reason", change.reason}};
  if (change.fate == ChangeFate::kLeftOut) return json;
  json["kind"] = change_kind_name(change.kind);
  json["name"] = change.name;
  json["edge_mm"] = figure(change.edge / mm);
  if (change.outcome.failed) return json;
  json["moved_kPa"] = figure(change.moved / kPa);
  json["relief_kPa"] = Json::object();
  for (const InletRelief& valve : change.outcome.lowered)
    json["relief_kPa"][valve.inlet] = figure(valve.highest / kPa);
  json["then"] = state_json(advice, change.outcome);
  return json;
}

std::string tried_row(const TriedChange& change) {
  const bool solved = change.fate != ChangeFate::kLeftOut && !change.outcome.failed;
  return "| " + markdown_text(english(change.words)) + " | " + std::string(fate_text(change.fate)) + " | " +
         (solved ? percent_text(change.outcome.share) + " at " + markdown_text(change.outcome.where) : "") +
         " | " + (solved ? fixed_text(change.moved / kPa, 2) : "") + " | " +
         (solved ? fixed_text(change.edge / mm, 1) : "") + " | " + markdown_text(change.reason) + " |\n";
}

}  // namespace

const ChangeOutcome& before_of(const Advice& advice, const TriedChange& change) {
  return change.edge == advice.edge ? advice.plan : advice.screened_plan;
}

std::string_view fate_text(ChangeFate fate) {
  switch (fate) {
    case ChangeFate::kAdvised:
      return "advised";
    case ChangeFate::kNotSolved:
      return "within on the preview mesh";
    case ChangeFate::kNotThere:
      return "not within on the plan's mesh";
    case ChangeFate::kNotEnough:
      return "not enough";
    case ChangeFate::kNoHelp:
      return "hardly helps";
    case ChangeFate::kWorse:
      return "makes something worse";
    case ChangeFate::kNoAnswer:
      return "no answer";
    case ChangeFate::kLeftOut:
      break;
  }
  return "does not apply";
}

std::vector<std::string> advice_words(const Advice& advice, const std::string& plan_file) {
  std::vector<std::string> words;
  if (advice.plan.within) {
    words.push_back("The plan is within its limits as it is, so nothing is advised: on its own mesh (edge " +
                    edge_text(advice.edge) + ") " + nearest_text(advice.plan) + ".");
  } else {
    const auto advised = with_fate(advice, ChangeFate::kAdvised);
    if (advised.empty())
      say_none(advice, plan_file, words);
    else
      say_advised(advice, advised, words);
    say_not_enough(advice, words);
    if (const std::string rest = rest_text(advice); !rest.empty()) words.push_back(rest);
  }
  words.insert(words.end(), advice.cautions.begin(), advice.cautions.end());
  words.push_back(advice_basis(advice));
  return words;
}

std::string advice_json(const Advice& advice, const std::string& plan, const std::string& inputs_hash,
                        const std::string& plan_file) {
  Json json;
  json["wrapgauge-advice"] = 1;
  json["program"] = std::string(program_version());
  json["plan"] = plan;
  json["inputs_hash"] = inputs_hash;
  json["edge_mm"] = figure(advice.edge / mm);
  json["screening_edge_mm"] = figure(advice.screening_edge / mm);
  json["model_factor"] = advice.model_factor;
  json["plan_within_limits"] = advice.plan.within;
  json["as_planned"] = state_json(advice, advice.plan);
  json["as_planned_coarse"] = state_json(advice, advice.screened_plan);
  json["changes"] = Json::array();
  for (const TriedChange& change : advice.changes) json["changes"].push_back(tried_json(advice, change));
  json["words"] = advice_words(advice, plan_file);
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string advice_markdown(const Advice& advice, const std::string& plan, const std::string& plan_file) {
  std::string page = "# Advice: " + markdown_text(plan) + "\n";
  for (const std::string& sentence : advice_words(advice, plan_file))
    page.append("\n").append(markdown_text(sentence)).append("\n");
  if (advice.changes.empty()) return page;
  page +=
      "\n## Everything that was tried\n\n| change | what became of it | nearest its limit | moved, kPa | "
      "mesh edge, mm | why |\n|---|---|---|---|---|---|\n";
  for (const TriedChange& change : advice.changes) page += tried_row(change);
  return page +
         "\nMoved: root mean square of how far the chambers' mean contact pressure moves, weighted by drawn "
         "area.\n";
}

}  // namespace wrapgauge
