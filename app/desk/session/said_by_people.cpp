#include "app/desk/session/said_by_people.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <string_view>

#include "app/desk/session/marked_sites.hpp"
#include "model/limits/part_finding.hpp"
#include "model/plan/people_json.hpp"

namespace wrapgauge {
namespace {

// An empty field is words that are missing, not a file that was typed wrongly.
std::string typed(const std::string& words) {
  return words.empty() ? " " : words;
}

// As it would be read in a plan file, without the place there: it is said beside its field.
template <class Read>
std::optional<Problem> wrong_with(const nlohmann::json& said, const Read& read) {
  JsonObject object(said, "");
  read(object);
  auto problem = object.finish();
  constexpr std::string_view kAfterPlace = ": ";
  if (problem && problem->message.starts_with(kAfterPlace)) problem->message.erase(0, kAfterPlace.size());
  return problem;
}

}  // namespace

Result<Plan> with_sites_confirmed(Plan plan, const SitesConfirmed& word) {
  const nlohmann::json said = {
      {"who", typed(word.who)}, {"when", typed(word.when)}, {"why", typed(word.why)}};
  if (auto problem = wrong_with(said, sites_confirmed_from_json)) return *problem;
  plan.sites_confirmed = word;
  return plan;
}

Result<Plan> with_clearance(Plan plan, const Clearance& clinician) {
  const nlohmann::json said = {
      {"name", typed(clinician.name)}, {"role", typed(clinician.role)}, {"date", typed(clinician.date)}};
  if (auto problem = wrong_with(said, clearance_from_json)) return *problem;
  plan.cleared_by = clinician;
  return plan;
}

Result<Plan> with_date(Plan plan, const std::string& date) {
  const nlohmann::json said = {{"date", date}};
  const auto read = [](JsonObject& object) { object.date("date"); };
  if (auto problem = date.empty() ? std::nullopt : wrong_with(said, read)) return *problem;
  plan.date = date;
  return plan;
}

int answers_missing(const Plan& plan) {
  return plan.wearers.missing() + (plan.date.empty() ? 1 : 0);
}

bool asks_for_clearance(const SessionState& state) {
  if (state.plan->cleared_by) return true;
  if (!state.solved || !state.body()) return false;
  const auto part = part_of(*state.plan, *state.body());
  if (!part || !needs_clearance_all_round(*part)) return false;
  const auto& findings = state.solved->estimate->findings;
  return std::any_of(findings.begin(), findings.end(),
                     [](const Finding& finding) { return finding.source_key == kAllRoundRule; });
}

bool may_have_no_sites(const SessionState& state) {
  if (state.plan->sites_confirmed) return true;
  if (!state.body() || !state.body()->bony_sites.empty()) return false;
  const auto part = part_of(*state.plan, *state.body());
  return part && is_worn(*part);
}

}  // namespace wrapgauge
