#pragma once
// Single changes that bring a plan within its limits, with what each is predicted to do. Tried on a coarse
// mesh, and advised only when solved on the plan's own.

#include <optional>
#include <string>
#include <vector>

#include "model/study/change_outcome.hpp"
#include "model/study/many_runs.hpp"

namespace wrapgauge {

inline constexpr Length kScreeningEdge =
    8.0 * mm;  // of the first tries, or the plan's own where that is coarser

enum class ChangeFate {
  kAdvised,    // within the limits on the plan's own mesh, nothing worse
  kNotSolved,  // within on the coarse mesh; not solved on the plan's own
  kNotThere,   // within on the coarse mesh, but not on the plan's own
  kNotEnough,  // better and nothing worse, but still above a limit
  kNoHelp,     // hardly moves what is nearest
  kWorse,      // something else gets worse
  kNoAnswer,   // no equilibrium, or it cannot be put on
  kLeftOut,    // cannot be made of this plan
};

struct TriedChange {
  ChangeKind kind = ChangeKind::kInflation;
  std::string name, family;
  Phrase words;  // what to do, valves that have to be lowered with it included
  ChangeFate fate = ChangeFate::kLeftOut;
  std::string reason;  // of the last four and of kNotThere
  ChangeOutcome outcome;
  Length edge;     // of the mesh that the outcome is of
  Pressure moved;  // how far the mean contact pressure of the chambers moves (drift)
  // With the change; of an advised one, and of one that makes nothing worse but is not enough by itself.
  std::optional<Plan> plan;
};

struct AdviceJob {
  Plan plan;
  Body body;  // as it was read
  Resources resources;
  std::string inputs_hash;
};

struct Advice {
  Length edge, screening_edge;
  double model_factor = 1.5;
  std::vector<std::string> cautions;  // limits of one's own, tables that differ
  std::vector<std::string> chambers;  // names, in the order of the means
  ChangeOutcome plan;                 // as it is, on its own mesh
  ChangeOutcome screened_plan;        // and on the coarse mesh
  // Ranked: advised ones by how little they move the chambers' contact pressure; then those that are not
  // enough by what is left of the excess; then the others as they were tried. Empty: within already.
  std::vector<TriedChange> changes;

  const Plan* advised() const;  // the plan with the first of the advised changes; null: there is none
};

// Before anything is written: a test object, a plan that prepare refuses.
std::optional<Problem> advice_refused(const AdviceJob& job);

// Every run is kept in `folders`. Problems: those of advice_refused; kNotConverged when the plan as it is
// finds no equilibrium; cancelled, out of memory.
Result<Advice> find_advice(const AdviceJob& job, const RunFolders& folders,
                           Progress& progress = silent_progress());

}  // namespace wrapgauge
