#pragma once
// One solved state held against every limit: the only place where findings and hazards are gathered. Whatever
// an estimate ends with, a ceiling, an aim and a run of a spread count too.

#include "model/limits/comparison.hpp"
#include "model/limits/hazard.hpp"
#include "model/limits/relief.hpp"
#include "model/limits/skin_exposure.hpp"

namespace wrapgauge {

// A load path with what was read off its last state.
struct Solved {
  const InflationSetup& setup;
  const LoadPath& path;
  const ContactMap& map;
  const ContactFigures& figures;
  const Audit& audit;
};

// What it is held against, and what it is filled by.
struct Rules {
  const LimitSet& limits;
  const Comparisons& comparisons;
  const LimitInputs& inputs;
  const Supply& supply;
  const Filling& filling;
  // Settings that were solved; none: those that the path alone gives.
  std::optional<std::vector<InletRelief>> relief = std::nullopt;
};

struct Judgement {
  std::vector<Finding> findings;  // worst first
  std::vector<Hazard> hazards;
  std::vector<InletRelief> relief;
  std::optional<SkinExposure> exposure;  // none: the plan gives no session

  Severity worst() const;  // of findings and hazards
};

Judgement judged(const Solved& solved, const Rules& rules);

}  // namespace wrapgauge
