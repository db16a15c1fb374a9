#pragma once
// One run of a spread: inputs drawn, figures found or why there are none. Each is a small file of its own, so
// that a study can stop, go on, and be done on several machines.

#include <filesystem>
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

// "3f2a....json": from everything the run depends on.
std::string run_file_name(const SpreadRun& run, const std::vector<UncertainInput>& inputs);
std::string run_json(const SpreadRun& run, const std::vector<UncertainInput>& inputs,
                     const SpreadOutcome& outcome);
// None: no such file, or it holds another run or is broken; it is then solved anew.
std::optional<SpreadOutcome> read_run(const std::filesystem::path& file, const SpreadRun& run,
                                      const std::vector<UncertainInput>& inputs);

}  // namespace wrapgauge
