#include "model/study/ceiling_finder.hpp"

#include <algorithm>
#include <limits>

#include "model/core/said_problem.hpp"
#include "model/inflation/chamber_names.hpp"

namespace wrapgauge {
namespace {

constexpr double kAbove = 1.05;  // where the answer is checked from above

}  // namespace

CeilingFinder::CeilingFinder(const StudyCase& study, std::optional<std::size_t> only,
                             const CeilingOptions& options, Progress& progress, const LoadPath* to_plan)
    : study_(study),
      only_(only),
      options_(options),
      progress_(progress),
      to_plan_(to_plan),
      scale_(study, only) {}

Result<InletCeiling> CeilingFinder::find() {
  if (auto problem = scale_.problem()) return *problem;
  const auto found =
      search_ceiling([this](double inflation, double known_within) { return solve(inflation, known_within); },
                     options_.search);
  if (!found) return found.problem();
  InletCeiling ceiling;
  if (only_) ceiling.inlet = study_.inlet_of(*only_);
  ceiling.stop = found->stop;
  ceiling.solves = found->solves;
  if (found->stop == CeilingStop::kLimitPoint)
    ceiling.limit_kind = limit_kind_, ceiling.limit_chambers = limit_chambers_;
  if (found->at.inflation > 0.0)
    if (auto problem = set_down(ceiling, found->at.inflation)) return *problem;
  if (ceiling.inlets.empty()) {
    ceiling.stop = CeilingStop::kAlreadyAbove;
    ceiling.at = check_at(found->above.inflation);
    return ceiling;
  }
  if (found->stop == CeilingStop::kWithin) return ceiling;
  auto above = solved_check(kAbove * found->at.inflation);
  if (!above) return above.problem();
  ceiling.above = *above;
  ++ceiling.solves;
  return ceiling;
}

Result<StateReading> CeilingFinder::judged(const LoadPath& path) {
  if (!options_.relief) return study_.read(path);
  return study_.read_with_relief(path, progress_);
}

// The answer is what is set: rounded down, solved, and set lower still where a limit is met by that.
std::optional<Problem> CeilingFinder::set_down(InletCeiling& ceiling, double inflation) {
  constexpr int kTries = 8;
  constexpr double kLower = 0.98;
  for (int attempt = 0; attempt < kTries; ++attempt, inflation *= kLower) {
    const std::vector<InflationTarget> settings = scale_.settings_at(inflation);
    const double share = scale_.inflation_of(settings);
    if (share <= 0.0) return std::nullopt;
    ++ceiling.solves;
    const auto path = study_.inflate_to(settings, progress_);
    if (!path && path.problem().kind != ProblemKind::kNotConverged) return path.problem();
    if (!path || path->limit_point) continue;
    if (search_share(study_.read(*path).nearest) > 1.0) continue;
    const auto judged_there = judged(*path);
    if (!judged_there) return judged_there.problem();
    const StateReading& reading = *judged_there;
    ceiling.inlets = inlets_of(settings, reading);
    ceiling.at = check_of(share, reading);
    ceiling.relief_there = reading.judgement.relief;
    return std::nullopt;
  }
  if (const auto& misfit = study_.setup().misfit)
    return not_converged(Phrase::worded(
        "The ceiling did not settle: just below where the limit is met it is met again. Correct "
        "how it fits. %1",
        {*misfit}));
  return not_converged(Phrase::worded(
      "The ceiling did not settle: just below where the limit is met it is met again. Use a finer mesh."));
}

// The reading at `inflation`, solved if it has not been.
Result<CeilingCheck> CeilingFinder::solved_check(double inflation) {
  if (!read_.contains(inflation) && !gone_.contains(inflation)) {
    const auto solved = solve(inflation, inflation * (1.0 - 1e-9));
    if (!solved && solved.problem().kind != ProblemKind::kNotConverged) return solved.problem();
    if (!solved || solved->at_limit_point) gone_.insert(inflation);
  }
  return check_at(inflation);
}

Result<LoadPath> CeilingFinder::path_to(double inflation) {
  const std::vector<InflationTarget> targets = scale_.at(inflation);
  if (to_plan_ && targets == study_.targets()) return *to_plan_;
  return study_.inflate_to(targets, progress_);
}

Result<SharePath> CeilingFinder::solve(double inflation, double known_within) {
  const auto path = path_to(inflation);
  if (!path) return path.problem();
  scale_.closed_at(path->states.front());
  if (auto problem = scale_.problem()) return *problem;
  if (inflation == 1.0 && !only_ && !plan_reading_) {
    auto reading = judged(*path);
    if (!reading) return reading.problem();
    plan_reading_ = std::move(reading).value();
  }
  return shares_of(*path, inflation, known_within);
}

SharePath CeilingFinder::shares_of(const LoadPath& path, double inflation, double known_within) {
  SharePath shares;
  shares.at_limit_point = path.limit_point.has_value();
  for (std::size_t i = 0; i < path.states.size(); ++i) {
    const bool last = i + 1 == path.states.size();
    // Recorded states stand at equal steps from deflated to what is asked for.
    const double step = std::min(1.0, static_cast<double>(i) / study_.steps());
    const double at = i == 0 ? 0.0 : last && !shares.at_limit_point ? inflation : inflation * step;
    if (at <= known_within) continue;
    const StateReading reading = study_.read(path, i);
    const double share = search_share(reading.nearest);
    shares.points.push_back({at, share});
    if (i == 0 || share > 1.0 || (last && !path.limit_point)) read_[at] = reading;
    if (share > 1.0) {  // what lies beyond counts for nothing
      shares.at_limit_point = false;
      return shares;
    }
  }
  if (shares.at_limit_point) name_limit_point(path, shares);
  return shares;
}

// Above 1 whatever stops it. What has no share of its own counts without end, so that it is closed in on by
// halving.
double CeilingFinder::search_share(const LimitShare& nearest) const {
  const double share = nearest.share * options_.spread_factor;
  return nearest.above() && share <= 1.0 ? std::numeric_limits<double>::infinity() : share;
}

// The last recorded state is within; the limit point itself has no state.
void CeilingFinder::name_limit_point(const LoadPath& path, SharePath& shares) {
  limit_chambers_ = chambers_of(study_.setup(), path.limit_point->group);
  limit_kind_ = path.limit_point->kind;
  const double at = scale_.inflation_at(*path.limit_point);
  if (!shares.points.empty()) shares.points.pop_back();
  shares.points.push_back({at, 0.0});
}

CeilingCheck CeilingFinder::check_of(double inflation, const StateReading& reading) const {
  CeilingCheck check{inflation, true, reading.nearest, reading.figures.peak_anywhere};
  check.nearest.share *= options_.spread_factor;
  return check;
}

CeilingCheck CeilingFinder::check_at(double inflation) const {
  const auto found = read_.find(inflation);
  if (found != read_.end() && !gone_.contains(inflation)) return check_of(inflation, found->second);
  CeilingCheck check;
  check.inflation = inflation;
  check.equilibrium = false;
  return check;
}

std::vector<CeilingInlet> CeilingFinder::inlets_of(const std::vector<InflationTarget>& settings,
                                                   const StateReading& reading) const {
  std::vector<CeilingInlet> inlets;
  for (std::size_t g = 0; g < study_.groups(); ++g) {
    if (!scale_.scales(g)) continue;
    CeilingInlet inlet{study_.inlet_of(g), !std::holds_alternative<Pressure>(settings[g]), std::nullopt,
                       reading.gauge[g], reading.volume[g]};
    if (const auto* pressure = std::get_if<Pressure>(&settings[g])) inlet.gauge = *pressure;
    if (const auto* volume = std::get_if<Volume>(&settings[g])) inlet.volume = *volume;
    if (const auto* air = std::get_if<TrappedAir>(&settings[g])) inlet.pushed = air->pushed;
    inlets.push_back(inlet);
  }
  return inlets;
}

}  // namespace wrapgauge
