#pragma once
// What a changed plan comes to on one mesh, and whether anything in it is worse than before.

#include <optional>
#include <string>
#include <vector>

#include "model/study/plan_change.hpp"
#include "model/study/study_case.hpp"

namespace wrapgauge {

// One finding or hazard of a state, told apart by its place and by what it is about. Where several are alike
// the worst counts. The cause is left out: it turns from inflation to fastening as a place is let off, and
// neither may grow.
struct LimitMark {
  std::string where, what;
  double share = 0.0;  // of the limit; 0: has none
  Severity severity = Severity::kNote;
  std::string sentence;
};
// Of findings and hazards, relief valves included; by place and what.
std::vector<LimitMark> limit_marks(const Judgement& judgement);

struct ChangeOutcome {
  std::optional<std::string> failed;  // why there are no figures
  int rung = 0;                       // of the change: which amount the figures are of
  bool within = false;                // an estimate would end with exit code 0, relief valves included
  double share = 0.0;                 // of the limit that is nearest, after the model factor
  std::string where;
  std::vector<LimitMark> marks;
  std::vector<Pressure> mean;         // contact pressure, a chamber each
  std::vector<Volume> closed_volume;  // a group each, closed and not inflated
  std::vector<InletRelief> relief;    // highest settings of its valves
  std::vector<InletRelief> lowered;   // valves of the plan that had to be set lower
};

// Shares of a limit that differ by less are alike (judgement: between mesh edges of 8 and 3.5 mm those of the
// demo cuff move by 0.02 to 0.06, and before and after are always compared on meshes of one edge).
inline constexpr double kAlikeShare = 0.02;

// What of `before` is worse in `after`, in words; none: nothing. Worse is a share that grew by more than
// kAlikeShare, a severity that rose, a mark above a limit that was not there, relief valves without a
// setting.
std::optional<std::string> worsened(const ChangeOutcome& before, const ChangeOutcome& after);

// Area-weighted root mean square of how far the chambers' mean contact pressure moved: how far the change
// leads from what the maker set out to do. `drawn_area`: a chamber each.
Pressure drift(const ChangeOutcome& before, const ChangeOutcome& after, const std::vector<Area>& drawn_area);

// How a change is solved.
struct ChangeSolve {
  FlatMeshOptions mesh;
  double share_factor = 1.0;  // shares of a limit count so many times while an amount is looked for
  bool search = true;         // the least amount that is within; else `first` and a few beyond
  int first = 0;
  bool fit_valves = true;  // relief valves that open above what is allowed are lowered with the change
  // The plan as it is on this mesh, from which changes of inflation and times start; null: each starts anew,
  // to the same outcome.
  const StudyCase* as_planned = nullptr;
};

// With `search` the least rung that is within is found by halving, taking that more of a change lets off
// more; where even the last is not within, it is the last rung's. `body` as body_of_plan gives it. A plan
// that cannot be put on, finds no equilibrium or ends at a limit point is an outcome. Problems: cancelled,
// out of memory.
Result<ChangeOutcome> solve_change(const PlanChange& change, const ChangeSolve& how, const Body& body,
                                   const Resources& resources, Progress& progress);

// As JSON in one line (many_runs.hpp). None: it is no outcome of a change.
std::string change_outcome_json(const ChangeOutcome& outcome);
std::optional<ChangeOutcome> change_outcome_from(const std::string& json);

}  // namespace wrapgauge
