#include "model/pipeline/solved_relief.hpp"

#include <algorithm>

#include "model/core/rounded_down.hpp"
#include "model/inflation/kept_closing.hpp"
#include "model/limits/limit_share.hpp"

namespace wrapgauge {
namespace {

// Tells which of several solves the stages belong to.
class ReliefProgress : public Progress {
 public:
  explicit ReliefProgress(Progress& inner) : inner_(inner) {}
  void report(std::string_view, double fraction) override {
    inner_.report("once more at the relief valves' settings", fraction);
  }
  bool cancelled() const override { return inner_.cancelled(); }

 private:
  Progress& inner_;
};

std::vector<InflationTarget> targets_of(const Prepared& worn, const std::vector<InletRelief>& settings) {
  std::vector<InflationTarget> targets(worn.targets.size(), Pressure());
  for (std::size_t g = 0; g < targets.size(); ++g) {
    const Inlet& inlet = worn.setup.layout.inlets[index_of(worn.setup.flat.group_inlet[g])];
    for (const InletRelief& setting : settings)
      if (setting.inlet == inlet.name) targets[g] = setting.highest;
  }
  return targets;
}

// Of its limit, that the most pressed place takes in the last state of a path.
double highest_share(const ReliefJob& job, const LoadPath& path) {
  const EquilibriumState& last = path.states.back();
  const InflationSetup& setup = job.worn.setup;
  const ContactMap map = contact_map(setup, path, last);
  const ContactFigures figures = contact_figures(job.body, setup, {}, path, last, map);
  const Eigen::VectorXd share =
      share_of_limit(job.limits, job.inputs, setup, last, path.sheet, figures, map.mean_1cm2_pa);
  return share.size() > 0 ? share.maxCoeff() : 0.0;
}

bool any_open(const std::vector<InletRelief>& settings) {
  return std::any_of(settings.begin(), settings.end(),
                     [](const InletRelief& setting) { return setting.highest > Pressure(); });
}

}  // namespace

Result<SolvedRelief> solved_relief(const ReliefJob& job, std::vector<InletRelief> settings,
                                   Progress& progress) {
  constexpr int kTries = 8;
  constexpr double kLower = 0.9;
  ReliefProgress relief_progress(progress);
  for (int attempt = 0; attempt < kTries && any_open(settings); ++attempt) {
    const auto path = inflate(job.worn.setup, targets_of(job.worn, settings), job.solver, relief_progress,
                              job.worn.closing.get());
    if (!path && path.problem().kind != ProblemKind::kNotConverged) return path.problem();
    const double share = path && !path->limit_point ? highest_share(job, *path) : 1e9;
    if (share <= job.limits.relief.times_limit) return SolvedRelief{std::move(settings), share};
    // What lies far above is brought down at once, as if contact went with the inflation.
    const double lower = std::clamp(job.limits.relief.times_limit / share, 0.5, kLower);
    for (InletRelief& setting : settings) setting.highest = setting_of(setting.highest * lower);
  }
  return SolvedRelief{};
}

}  // namespace wrapgauge
