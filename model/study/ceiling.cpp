#include "model/study/ceiling.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "model/body/part_rules.hpp"
#include "model/inflation/chamber_names.hpp"
#include "model/study/inlet_scale.hpp"
#include "model/study/relief_valve.hpp"
#include "model/study/staged_progress.hpp"

namespace wrapgauge {
namespace {

constexpr double kAbove = 1.05;  // where the answer is checked from above

// One search: solves at inflations, remembers what was read where it was solved to.
class CeilingFinder {
 public:
  CeilingFinder(const StudyCase& study, std::optional<std::size_t> only, const CeilingOptions& options,
                Progress& progress)
      : study_(study), only_(only), options_(options), progress_(progress), scale_(study, only) {}

  Result<InletCeiling> find() {
    if (auto problem = scale_.problem()) return *problem;
    const auto found = search_ceiling(
        [this](double inflation, double known_within) { return solve(inflation, known_within); },
        options_.search);
    if (!found) return found.problem();
    InletCeiling ceiling;
    if (only_) ceiling.inlet = study_.inlet_of(*only_);
    ceiling.stop = found->stop;
    ceiling.at = check_at(found->at.inflation);
    if (found->stop == CeilingStop::kLimitPoint)
      ceiling.limit_kind = limit_kind_, ceiling.limit_chambers = limit_chambers_;
    if (found->stop != CeilingStop::kAlreadyAbove) ceiling.inlets = inlets_at(found->at.inflation);
    ceiling.solves = found->solves;
    if (found->stop == CeilingStop::kAlreadyAbove || found->stop == CeilingStop::kWithin) return ceiling;
    auto above = solved_check(kAbove * found->at.inflation);
    if (!above) return above.problem();
    ceiling.above = *above;
    ++ceiling.solves;
    return ceiling;
  }

  // The reading at `inflation`, solved if it has not been.
  Result<CeilingCheck> solved_check(double inflation) {
    if (!read_.contains(inflation) && !gone_.contains(inflation)) {
      const auto solved = solve(inflation, inflation * (1.0 - 1e-9));
      if (!solved && solved.problem().kind != ProblemKind::kNotConverged) return solved.problem();
      if (!solved || solved->at_limit_point) gone_[inflation] = true;
    }
    return check_at(inflation);
  }

  const StateReading& reading_at(double inflation) const { return read_.at(inflation); }
  std::vector<CeilingInlet> inlets_at(double inflation) const {
    std::vector<CeilingInlet> inlets;
    const StateReading& reading = read_.at(inflation);
    for (std::size_t g = 0; g < study_.groups(); ++g)
      if (scale_.scales(g)) inlets.push_back(inlet_of(g, inflation, reading));
    return inlets;
  }

 private:
  Result<SharePath> solve(double inflation, double known_within) {
    auto path = study_.inflate_to(scale_.at(inflation), progress_);
    if (!path) return path.problem();
    scale_.closed_at(path->states.front());
    if (auto problem = scale_.problem()) return *problem;
    SharePath shares;
    shares.at_limit_point = path->limit_point.has_value();
    for (std::size_t i = 0; i < path->states.size(); ++i) {
      const bool last = i + 1 == path->states.size();
      const double at = last && !shares.at_limit_point ? inflation : inflation * step_share(i);
      if (at <= known_within) continue;
      const StateReading reading = study_.read(*path, path->states[i]);
      const double share = reading.nearest.share * options_.spread_factor;
      shares.points.push_back({i == 0 ? 0.0 : at, share});
      if (i == 0 || (last && !path->limit_point)) read_[i == 0 ? 0.0 : at] = reading;
      if (share > 1.0 && !last) {  // what lies beyond counts for nothing
        shares.at_limit_point = false;
        read_[shares.points.back().inflation] = reading;
        return shares;
      }
    }
    if (shares.at_limit_point) name_limit_point(*path, shares);
    return shares;
  }

  CeilingInlet inlet_of(std::size_t g, double inflation, const StateReading& reading) const {
    const InflationTarget& target = study_.targets()[g];
    CeilingInlet inlet{study_.inlet_of(g), !std::holds_alternative<Pressure>(target), std::nullopt,
                       reading.gauge[g], reading.volume[g]};
    if (const auto* air = std::get_if<TrappedAir>(&target)) inlet.pushed = air->pushed * inflation;
    return inlet;
  }

  // Recorded states stand at equal steps from closed to what is asked for.
  double step_share(std::size_t state) const {
    return std::min(1.0, static_cast<double>(state) / study_.steps());
  }

  // The last recorded state is within; the limit point itself has no state.
  void name_limit_point(const LoadPath& path, SharePath& shares) {
    limit_chambers_ = chambers_of(study_.setup(), path.limit_point->group);
    limit_kind_ = path.limit_point->kind;
    const double at = scale_.inflation_at(*path.limit_point);
    if (!shares.points.empty()) shares.points.pop_back();
    shares.points.push_back({at, 0.0});
  }

  CeilingCheck check_at(double inflation) const {
    CeilingCheck check;
    check.inflation = inflation;
    const auto found = read_.find(inflation);
    check.equilibrium = found != read_.end() && !gone_.contains(inflation);
    if (!check.equilibrium) return check;
    check.nearest = found->second.nearest;
    check.nearest.share *= options_.spread_factor;
    check.peak = found->second.figures.peak_anywhere;
    return check;
  }

  const StudyCase& study_;
  std::optional<std::size_t> only_;
  const CeilingOptions& options_;
  Progress& progress_;
  InletScale scale_;
  std::map<double, StateReading> read_;
  std::map<double, bool> gone_;  // no equilibrium there
  LimitKind limit_kind_ = LimitKind::kRunsAway;
  std::string limit_chambers_;
};

// Every inlet's valve at its setting at once, solved; lowered once where the rule's share is passed.
Result<ReliefSetting> set_relief(const StudyCase& study, const InletCeiling& together,
                                 CeilingFinder& finder) {
  const StateReading& reading = finder.reading_at(together.at.inflation);
  const ReliefRule& rule = study.limits().relief;
  const Pressure cap = study.goes_round(reading) ? rule.cuff : rule.pad;
  ReliefSetting setting;
  setting.rule = relief_words(rule, cap);
  setting.inlets = together.inlets;
  double share = rule.times_limit;
  for (int attempt = 0; attempt < 2; ++attempt) {
    const double inflation = share * together.at.inflation;
    const auto check = finder.solved_check(inflation);
    if (!check) return check.problem();
    if (check->equilibrium && check->nearest.share <= rule.times_limit) {
      setting.inlets = finder.inlets_at(inflation);
      setting.at = *check;
      break;
    }
    const double passed = check->equilibrium ? check->nearest.share - together.at.nearest.share : 1.0;
    share = 1.0 + (share - 1.0) * 0.9 * std::min(1.0, (rule.times_limit - 1.0) / passed);
  }
  for (CeilingInlet& inlet : setting.inlets)
    if (inlet.gauge > cap) inlet.gauge = cap, setting.at.reset();
  return setting;
}

}  // namespace

bool InletCeiling::confirmed() const {
  return at.equilibrium && at.nearest.share <= 1.0 && above &&
         (!above->equilibrium || above->nearest.share > 1.0);
}

Result<Ceiling> find_ceiling(const Plan& plan, const Body& body, const Resources& resources,
                             const CeilingOptions& options, Progress& progress) {
  const auto ready = body_of_plan(plan, body);
  if (!ready) return ready.problem();
  if (auto problem = not_of_a_test_object(ready->part, "ceiling")) return *problem;
  const auto study = StudyCase::make(plan, *ready, resources, mesh_of_plan(plan));
  if (!study) return study.problem();
  Ceiling ceiling;
  ceiling.edge = plan.mesh_edge;
  ceiling.model_factor = resources.limits.model_factor;
  ceiling.spread_factor = options.spread_factor;
  ceiling.limits_override = english(resources.limits.override_words);

  StagedProgress all_progress(progress, "all inlets together: ");
  CeilingFinder finder(*study, std::nullopt, options, all_progress);
  auto together = finder.find();
  if (!together) return together.problem();
  ceiling.together = std::move(together).value();
  if (ceiling.together.stop != CeilingStop::kAlreadyAbove && ceiling.together.stop != CeilingStop::kWithin) {
    auto relief = set_relief(*study, ceiling.together, finder);
    if (!relief) return relief.problem();
    ceiling.relief = std::move(relief).value();
  }
  if (!options.alone || study->groups() < 2) return ceiling;
  for (std::size_t g = 0; g < study->groups(); ++g) {
    if (!InletScale(*study, g).scales(g)) continue;
    StagedProgress one_progress(progress, "inlet '" + study->inlet_of(g) + "' alone: ");
    auto alone = CeilingFinder(*study, g, options, one_progress).find();
    if (!alone) return alone.problem();
    ceiling.alone.push_back(std::move(alone).value());
  }
  return ceiling;
}

}  // namespace wrapgauge
