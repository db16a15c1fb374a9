#pragma once
// One run of a spread: inputs drawn, figures found or why there are none.

#include <optional>
#include <string>
#include <vector>

#include "model/study/run_figures.hpp"
#include "model/study/varied_plan.hpp"

namespace wrapgauge {

struct SpreadRun {
  std::string name;            // "run 7", "nominal", "nominal, fine mesh"
  std::string inputs_hash;     // of the files it came from
  Length edge;                 // of its mesh
  std::vector<double> values;  // one an input, in its unit; empty: nominal
};

// What one run found. `failed`: the sentence of the problem that left it without figures.
struct SpreadOutcome {
  std::optional<std::string> failed;
  RunFigures figures;
};

// Solves one run. A run that finds no equilibrium, runs away or cannot be laid on is a failed outcome; only
// cancelling is a Problem.
Result<SpreadOutcome> solve_run(const SpreadRun& run, const Plan& plan, const Body& body,
                                const Resources& resources, const std::vector<UncertainInput>& inputs,
                                Progress& progress);

// Everything the run depends on, and what it found, each as JSON in one line (many_runs.hpp).
std::string run_identity(const SpreadRun& run, const std::vector<UncertainInput>& inputs);
std::string outcome_json(const SpreadOutcome& outcome);
// None: it is no outcome of a spread.
std::optional<SpreadOutcome> outcome_from(const std::string& json);

}  // namespace wrapgauge
