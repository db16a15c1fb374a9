#pragma once
// The highest inflation at which an estimate would end with nothing above a limit: which finding or hazard
// stops it, and how high the relief valves may be set. Predicted, like everything it rests on; below it
// nothing is proven harmless.

#include <optional>
#include <string>
#include <vector>

#include "model/study/ceiling_search.hpp"
#include "model/study/study_case.hpp"

namespace wrapgauge {

// As it is set: what is printed was solved, rounded down from what was found.
struct CeilingInlet {
  std::string inlet;
  bool by_volume = false;        // as the plan fills it
  std::optional<Volume> pushed;  // air at room pressure, where the plan pushes air in
  Pressure gauge;
  Volume volume;  // enclosed between the sheets
};

// One solved state that the answer rests on.
struct CeilingCheck {
  double inflation = 0.0;  // of the plan's
  bool equilibrium = true;
  LimitShare nearest;  // with model factor and spread factor
  Pressure peak;       // predicted, over 1 cm2
};

struct InletCeiling {
  std::optional<std::string> inlet;  // none: all inlets together, in the plan's proportion
  CeilingStop stop = CeilingStop::kLimit;
  std::vector<CeilingInlet> inlets;   // empty when nothing may be inflated
  CeilingCheck at;                    // solved at the settings; kAlreadyAbove: what stops it
  std::optional<CeilingCheck> above;  // solved 5 % above what was found; none: kAlreadyAbove, kWithin
  // Of a limit point: what kind, and the chambers whose bulge runs away or whose sheet it is.
  std::optional<LimitKind> limit_kind;
  std::string limit_chambers;
  std::vector<InletRelief> relief_there;  // of a plan that asks for the settings
  int solves = 0;

  bool confirmed() const;  // within at the answer, and 5 % above it not
};

// The relief valves of the plan, as its estimate says them.
struct ReliefCheck {
  std::vector<InletRelief> settings;
  double place_share =
      0.0;           // of its limit, that the most pressed place takes with every inlet at its setting
  std::string rule;  // with status
  std::optional<std::string> too_high;  // what is said of the plan's own valves where one opens above this
};

struct Ceiling {
  Length edge;
  double model_factor = 1.5;
  double spread_factor = 1.0;                                // 1: the spread of inputs was left out
  std::string model = "Predicted by an uncalibrated model";  // or by one that is calibrated on what
  std::optional<std::string> limits_override;                // why the limits may be laxer than the program's
  bool plan_within = false;  // the plan as it stands: nothing above a limit, its relief valves included
  InletCeiling together;
  std::vector<InletCeiling> alone;    // each inlet, the others open; empty with a single inlet
  std::optional<ReliefCheck> relief;  // none: nothing may be inflated, or none keeps the rule
};

struct CeilingOptions {
  double spread_factor = 1.0;  // the share of the limit is multiplied by this too
  bool alone = true;
  bool relief = true;  // solve for the relief valves too; without it plan_within leaves them out
  CeilingSearchOptions search;
};

// Problems: those of prepare and inflate; kBadInput when the plan inflates nothing, or asks an inlet for less
// than the deflated device holds.
Result<Ceiling> find_ceiling(const Plan& plan, const Body& body, const Resources& resources,
                             const CeilingOptions& options, Progress& progress = silent_progress());

// A plan that was laid on and solved before, on its own mesh.
struct InflatedPlan {
  const StudyCase& study;
  const LoadPath& path;  // to study.targets()
};
// The same to the same bits, without doing that again. `body` as body_of_plan gives it.
Result<Ceiling> find_ceiling(const Plan& plan, const Body& body, const Resources& resources,
                             const InflatedPlan& inflated, const CeilingOptions& options,
                             Progress& progress = silent_progress());

// The plan set to its ceiling: every inlet asks for its setting, and no relief valve opens above what an
// estimate of that plan allows. None: nothing may be inflated.
std::optional<Plan> plan_at_ceiling(const Plan& plan, const InletCeiling& together);

}  // namespace wrapgauge
