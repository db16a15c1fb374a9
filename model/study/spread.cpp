#include "model/study/spread.hpp"

#include <algorithm>

#include "model/study/percentile.hpp"

namespace wrapgauge {
namespace {

constexpr double kEnough = 0.75;  // of the sample must have an equilibrium

struct Sample {
  Eigen::MatrixXd inputs;                                // a row a run that has figures
  std::vector<const RunFigures*> figures;                // likewise
  const RunFigures *preview = nullptr, *fine = nullptr;  // nominal
};

std::optional<Problem> nominal_problem(const SpreadRuns& runs) {
  for (int n = 0; n < runs.nominals; ++n) {
    const SpreadOutcome& outcome = *runs.outcomes[static_cast<std::size_t>(n)];
    if (outcome.failed)
      return Problem{ProblemKind::kNotConverged,
                     "The run with every input as the plan gives it (" +
                         runs.runs[static_cast<std::size_t>(n)].name + ") has no figures: " + *outcome.failed,
                     {}};
  }
  return std::nullopt;
}

std::optional<Problem> failed_problem(const Spread& spread) {
  if (static_cast<double>(spread.failed.size()) <= (1.0 - kEnough) * spread.runs) return std::nullopt;
  return Problem{ProblemKind::kNotConverged,
                 std::to_string(spread.failed.size()) + " of " + std::to_string(spread.runs) +
                     " runs have no figures, more than a quarter, so there are no bands; the first, " +
                     spread.failed.front().run + ", says: " + spread.failed.front().sentence,
                 {}};
}

Sample sample_of(const SpreadRuns& runs, std::vector<FailedRun>& failed) {
  Sample sample;
  sample.preview = &runs.outcomes[0]->figures;
  sample.fine = &runs.outcomes[static_cast<std::size_t>(runs.nominals - 1)]->figures;
  std::vector<const SpreadRun*> used;
  for (std::size_t i = static_cast<std::size_t>(runs.nominals); i < runs.runs.size(); ++i) {
    if (runs.outcomes[i]->failed) {
      failed.push_back({runs.runs[i].name, *runs.outcomes[i]->failed});
      continue;
    }
    used.push_back(&runs.runs[i]);
    sample.figures.push_back(&runs.outcomes[i]->figures);
  }
  sample.inputs.resize(static_cast<Eigen::Index>(used.size()), static_cast<Eigen::Index>(runs.inputs.size()));
  for (std::size_t r = 0; r < used.size(); ++r)
    for (std::size_t i = 0; i < runs.inputs.size(); ++i)
      sample.inputs(static_cast<Eigen::Index>(r), static_cast<Eigen::Index>(i)) = used[r]->values[i];
  return sample;
}

template <class Figure>
std::vector<double> values_of(const Sample& sample, const Figure& figure) {
  std::vector<double> values;
  for (const RunFigures* run : sample.figures) values.push_back(figure(*run));
  return values;
}

template <class Figure>
FigureBand band_of(const Sample& sample, const Figure& figure) {
  const double shift = figure(*sample.fine) - figure(*sample.preview);
  std::vector<double> values = values_of(sample, figure);
  for (double& value : values) value = std::max(value + shift, 0.0);
  return {percentile(values, 0.05), percentile(values, 0.5), percentile(values, 0.95), figure(*sample.fine)};
}

template <class Figure>
FigureInfluence influence_of(const Sample& sample, std::string where, std::string key, const Figure& figure) {
  const std::vector<double> values = values_of(sample, figure);
  const Eigen::Map<const Eigen::VectorXd> column(values.data(), static_cast<Eigen::Index>(values.size()));
  return {std::move(where), std::move(key), rank_influence(sample.inputs, column)};
}

void read_whole(const Sample& sample, Spread& spread) {
  for (std::size_t f = 0; f < whole_figure_names().size(); ++f) {
    const auto figure = [f](const RunFigures& run) { return run.whole[f]; };
    spread.whole.push_back(band_of(sample, figure));
    spread.influences.push_back(influence_of(sample, "", whole_figure_names()[f].key, figure));
  }
}

void read_chambers(const SpreadJob& job, const Sample& sample, Spread& spread) {
  for (std::size_t c = 0; c < sample.fine->chambers.size(); ++c) {
    ChamberBands bands{job.plan.layout.chambers[c].name, {}};
    for (std::size_t f = 0; f < chamber_figure_names().size(); ++f) {
      const auto figure = [c, f](const RunFigures& run) { return run.chambers[c][f]; };
      bands.figures.push_back(band_of(sample, figure));
      spread.influences.push_back(influence_of(sample, bands.chamber, chamber_figure_names()[f].key, figure));
    }
    spread.chambers.push_back(std::move(bands));
  }
}

double limit_factor_of(const Sample& sample) {
  const auto share = [](const RunFigures& run) { return run.whole.back(); };
  const double nominal = share(*sample.preview);
  if (nominal <= 0.0) return 1.0;
  return std::max(1.0, percentile(values_of(sample, share), 0.95) / nominal);
}

}  // namespace

Result<Spread> spread_of(const SpreadJob& job, const SpreadRuns& runs) {
  if (runs.missing() > 0)
    return bad_input(std::to_string(runs.missing()) + " of " + std::to_string(runs.runs.size()) +
                     " runs are still to be solved: solve the other parts, then merge them.");
  if (auto problem = nominal_problem(runs)) return *problem;
  Spread spread;
  spread.plan = job.plan.name;
  spread.inputs_hash = job.inputs_hash;
  spread.seed = job.table.seed;
  spread.limits_override = english(job.resources.limits.override_words);
  spread.runs = static_cast<int>(runs.runs.size()) - runs.nominals;
  spread.preview_edge = runs.runs.front().edge;
  spread.fine_edge = job.plan.mesh_edge;
  spread.inputs = runs.inputs;
  const Sample sample = sample_of(runs, spread.failed);
  if (auto problem = failed_problem(spread)) return *problem;
  read_whole(sample, spread);
  read_chambers(job, sample, spread);
  spread.limit_factor = limit_factor_of(sample);
  return spread;
}

}  // namespace wrapgauge
