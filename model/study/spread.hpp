#pragma once
// How far a prediction may be off because its inputs are not known exactly: many runs, each with all inputs
// drawn at once, and from them the band that holds nine runs in ten, and the inputs that matter most.

#include <string>
#include <vector>

#include "model/study/influence.hpp"
#include "model/study/many_runs.hpp"
#include "model/study/spread_run.hpp"

namespace wrapgauge {

struct SpreadJob {
  const Plan& plan;
  const Body& body;  // as the plan's file or form gives it
  const Resources& resources;
  const SpreadTable& table;
  std::string inputs_hash;  // of all files these came from
};

struct SpreadRuns {
  std::vector<UncertainInput> inputs;
  std::vector<SpreadRun>
      runs;  // nominal on the preview mesh, nominal on the plan's mesh if finer, the sample
  std::vector<std::optional<SpreadOutcome>> outcomes;  // none: not solved yet
  int nominals = 1;                                    // how many of `runs` come before the sample
  int missing() const;
};

// How many runs the folders still lack. Problems: those of solve_spread before its first run.
Result<int> missing_spread_runs(const SpreadJob& job, const RunFolders& folders);

// Solves what the part still lacks and keeps each run as soon as it is done (many_runs.hpp). Problems: those
// of solve_runs; a body of which no part of a person is known.
Result<SpreadRuns> solve_spread(const SpreadJob& job, const RunFolders& folders, const RunPart& part,
                                Progress& progress = silent_progress());

// 5th, 50th and 95th percentile of the runs and the nominal figure, all for the plan's mesh.
struct FigureBand {
  double low = 0.0, median = 0.0, high = 0.0, nominal = 0.0;
};

struct ChamberBands {
  std::string chamber;
  std::vector<FigureBand> figures;  // in the order of chamber_figure_names()
};

struct FigureInfluence {
  std::string where;   // chamber; empty: the whole device
  std::string figure;  // key of the figure
  InfluenceRanking ranking;
};

struct FailedRun {
  std::string run, sentence;
};

struct Spread {
  std::string plan, inputs_hash;
  std::uint64_t seed = 0;
  int runs = 0;  // of the sample, failed ones counted
  Length preview_edge, fine_edge;
  std::optional<std::string> limits_override;  // why the limits may be laxer than the program's
  std::vector<UncertainInput> inputs;
  std::vector<FailedRun> failed;
  std::vector<ChamberBands> chambers;
  std::vector<FigureBand> whole;  // in the order of whole_figure_names()
  std::vector<FigureInfluence> influences;
  // 95th percentile of a run's highest share of a limit over the nominal one, both on the preview mesh; >= 1.
  double limit_factor = 1.0;
};

// Correction to the plan's mesh: the difference of the two nominal runs is added to every run's figure, which
// then stays at or above 0. Problems: kBadInput when runs are missing; kNotConverged when a nominal run
// failed or fewer than three quarters of the sample found an equilibrium.
Result<Spread> spread_of(const SpreadJob& job, const SpreadRuns& runs);

}  // namespace wrapgauge
