#include "app/desk/session/said_by_people.hpp"

#include <algorithm>
#include <initializer_list>
#include <nlohmann/json.hpp>
#include <string_view>

#include "app/desk/session/marked_sites.hpp"
#include "model/plan/plan_from_json.hpp"
#include "model/plan/plan_to_json.hpp"

namespace wrapgauge {
namespace {

// An empty field is words that are missing, not a file that was typed wrongly.
void leave_blank(std::initializer_list<std::string*> words) {
  for (std::string* word : words)
    if (word->empty()) word->push_back(' ');
}

// Without the place in a plan file: it is said beside its field.
Problem of_the_field(Problem problem) {
  constexpr std::string_view kAfterPlace = ": ";
  const std::size_t place = problem.message.find(kAfterPlace);
  if (place != std::string::npos) problem.message.erase(0, place + kAfterPlace.size());
  return problem;
}

// The rest of the plan may still be in the making, so what is said is read as part of a plan that is whole.
Result<Plan> taken_as_read(Plan plan) {
  constexpr const char* kWhere = "plan";
  Plan whole;
  whole.name = whole.layout.name = kWhere;
  whole.body = BodyForm{"cylinder", {}, {}};
  whole.layout.outline_m = {{0.0, 0.0}, {0.1, 0.0}, {0.1, 0.1}, {0.0, 0.1}};
  whole.placement.anchor = AnchorAtStation{100.0 * mm, 0.0};
  whole.layout.skin_sheet = whole.layout.outer_sheet = {"00-30", 2.0 * mm, 1.0};
  whole.sites_confirmed = plan.sites_confirmed;
  whole.cleared_by = plan.cleared_by;
  whole.date = plan.date;
  if (auto& word = whole.sites_confirmed) leave_blank({&word->who, &word->when, &word->why});
  if (auto& by = whole.cleared_by) leave_blank({&by->name, &by->role, &by->date});
  const auto read = plan_from_json(nlohmann::json::parse(plan_to_json(whole).dump()), {}, kWhere);
  if (!read) return of_the_field(read.problem());
  return plan;
}

}  // namespace

Result<Plan> with_sites_confirmed(Plan plan, const SitesConfirmed& word) {
  plan.sites_confirmed = word;
  return taken_as_read(std::move(plan));
}

Result<Plan> with_clearance(Plan plan, const Clearance& clinician) {
  plan.cleared_by = clinician;
  return taken_as_read(std::move(plan));
}

Result<Plan> with_date(Plan plan, const std::string& date) {
  plan.date = date;
  return taken_as_read(std::move(plan));
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
  return std::any_of(findings.begin(), findings.end(), [](const Finding& finding) {
    return finding.source_key == "all round chest, abdomen or head";
  });
}

bool may_have_no_sites(const SessionState& state) {
  if (state.plan->sites_confirmed) return true;
  if (!state.body() || !state.body()->bony_sites.empty()) return false;
  const auto part = part_of(*state.plan, *state.body());
  return part && is_worn(*part);
}

}  // namespace wrapgauge
