#pragma once
// The highest inflation at which every place stays within its limit: which place stops it, and how high a
// relief valve may be set. Predicted, like everything it rests on; below it nothing is proven harmless.

#include <optional>
#include <string>
#include <vector>

#include "model/study/ceiling_search.hpp"
#include "model/study/study_case.hpp"

namespace wrapgauge {

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
  CeilingCheck at;                    // solved at the answer
  std::optional<CeilingCheck> above;  // solved 5 % above it; none: nothing may be inflated, or kWithin
  // Of a limit point: what kind, and the chambers whose bulge runs away or whose sheet it is.
  std::optional<LimitKind> limit_kind;
  std::string limit_chambers;
  int solves = 0;

  bool confirmed() const;  // within at the answer, and 5 % above it not
};

// Highest setting of each inlet's relief valve, should the supply's own valve stick open.
struct ReliefSetting {
  std::vector<CeilingInlet> inlets;  // `gauge` is the setting
  std::optional<CeilingCheck> at;    // with every inlet at its setting; none: not solved
  std::string rule;                  // with status
};

struct Ceiling {
  Length edge;
  double model_factor = 1.5;
  double spread_factor = 1.0;                  // 1: the spread of inputs was left out
  std::optional<std::string> limits_override;  // why the limits may be laxer than the program's
  InletCeiling together;
  std::vector<InletCeiling> alone;      // each inlet, the others open; empty with a single inlet
  std::optional<ReliefSetting> relief;  // none: nothing may be inflated, or nothing was met
};

struct CeilingOptions {
  double spread_factor = 1.0;  // the share of the limit is multiplied by this too
  bool alone = true;
  CeilingSearchOptions search;
};

// Problems: those of prepare and inflate; kBadInput when the plan inflates nothing, or asks an inlet for less
// than the closed device holds.
Result<Ceiling> find_ceiling(const Plan& plan, const Body& body, const Resources& resources,
                             const CeilingOptions& options, Progress& progress = silent_progress());

}  // namespace wrapgauge
