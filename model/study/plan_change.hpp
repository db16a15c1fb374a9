#pragma once
// Single changes of a plan that may bring it within its limits, each a plan of its own. Nothing is solved
// here.

#include <functional>
#include <map>
#include <string>
#include <vector>

#include "model/core/phrase.hpp"
#include "model/limits/relief.hpp"
#include "model/pipeline/resources.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

enum class ChangeKind { kInflation, kFastening, kPlacement, kSheet, kTime, kValves };
std::string_view change_kind_name(ChangeKind kind);  // "inflation", "fastening", ...

// One thing that is changed one way, by one amount or by several: `rungs` amounts, each further from the plan
// than the one before. All that is printed of an amount is what `plan_at` sets.
struct PlanChange {
  std::string name;    // tells it apart: "fastening 2 % looser"
  std::string family;  // the same thing changed the same way: "fastening looser"
  ChangeKind kind = ChangeKind::kInflation;
  int rungs = 1;
  std::function<Plan(int rung)> plan_at;     // 0 <= rung < rungs
  std::function<Phrase(int rung)> words_at;  // "Lower 'lean left' from 3.0 to 1.6 kPa (12 mmHg)"
};

// Cannot be made of this plan.
struct NoChange {
  Phrase words;
  std::string reason;
};

struct PlanChanges {
  std::vector<PlanChange> changes;
  std::vector<NoChange> left_out;
};

struct ChangeBasis {
  const Plan& plan;
  const Body& body;  // as body_of_plan gives it
  const std::vector<SiliconeGrade>& silicones;
  std::map<std::string, Volume> closed_volume{};  // an inlet each: what it holds closed and not inflated
  bool time_breaks = false;                       // a rule of time is broken: shorter times are changes too
  bool valves_break = false;  // a relief valve opens too late: lower settings are a change too
};

// In this order: each inlet lower, all inlets lower together, relief valves alone, fastening, placement,
// sheets, times. A change that prepare() refuses is still in the list: it is refused when it is solved.
PlanChanges single_changes(const ChangeBasis& basis);

// The plan without valves that open above `highest`; which ones those are.
std::vector<InletRelief> valves_above(const Supply& supply, const std::vector<InletRelief>& highest);
void lower_valves(Supply& supply, const std::vector<InletRelief>& lowered);

}  // namespace wrapgauge
