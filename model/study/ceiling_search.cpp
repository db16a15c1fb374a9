#include "model/study/ceiling_search.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "model/core/said_problem.hpp"

namespace wrapgauge {
namespace {

constexpr double kNone = std::numeric_limits<double>::infinity();

class Search {
 public:
  Search(const SolveShare& solve, const CeilingSearchOptions& options) : solve_(solve), options_(options) {}

  Result<CeilingSearch> run() {
    if (auto problem = bracket()) return *problem;
    if (already_above_) return CeilingSearch{CeilingStop::kAlreadyAbove, *high_, *high_, solves_};
    if (!high_) return CeilingSearch{CeilingStop::kWithin, low_, low_, solves_};
    while (!settled()) {
      if (solves_ >= options_.solves_at_most) return unsettled();
      if (auto problem = solve_to(narrow() ? low_.inflation : next_guess())) return *problem;
      if (already_above_) return CeilingSearch{CeilingStop::kAlreadyAbove, *high_, *high_, solves_};
    }
    return CeilingSearch{why_high_, low_, *high_, solves_};
  }

 private:
  // Upwards by doubling until something is too much; downwards by halving until something has an equilibrium.
  std::optional<Problem> bracket() {
    double reach = options_.first;
    while (solves_ < options_.solves_at_most) {
      if (auto problem = solve_to(reach)) return problem;
      if (already_above_) return std::nullopt;
      if (!high_) {
        if (reach >= options_.largest) return std::nullopt;
        reach = std::min(2.0 * reach, options_.largest);
      } else if (!closed_known_) {
        reach *= 0.5;
      } else {
        return std::nullopt;
      }
    }
    return unsettled();
  }

  std::optional<Problem> solve_to(double inflation) {
    ++solves_;
    const double known_within = closed_known_ && low_solved_ ? std::min(low_.inflation, inflation) : -1.0;
    const auto path = solve_(inflation, inflation == known_within ? -1.0 : known_within);
    if (!path) {
      if (path.problem().kind != ProblemKind::kNotConverged) return path.problem();
      last_problem_ = phrase_of(path.problem());
      set_high({inflation, kNone}, CeilingStop::kNoEquilibrium);
      return std::nullopt;
    }
    closed_known_ = true;
    for (std::size_t i = 0; i < path->points.size(); ++i) {
      const bool last = i + 1 == path->points.size(), gone = last && path->at_limit_point;
      const SharePoint& point = path->points[i];
      if (gone || point.share > 1.0) {
        set_high({point.inflation, gone ? kNone : point.share},
                 gone ? CeilingStop::kLimitPoint : CeilingStop::kLimit);
        already_above_ = point.inflation <= 0.0;
        return std::nullopt;
      }
      if (point.inflation >= low_.inflation) set_low(point, last);
    }
    return std::nullopt;
  }

  void set_low(const SharePoint& point, bool solved) {
    low_solved_ = solved || point.inflation <= 0.0;
    low_ = point;
  }

  // A direct solve that contradicts what was read off a longer path wins.
  void set_high(const SharePoint& point, CeilingStop why) {
    if (high_ && point.inflation > high_->inflation) return;
    high_ = point;
    why_high_ = why;
    if (low_.inflation >= point.inflation) {
      low_ = {};
      low_solved_ = true;
    }
  }

  bool narrow() const {
    const double scale = std::max(high_->inflation, 0.05 * options_.first);
    return high_->inflation - low_.inflation <= options_.tolerance * scale;
  }
  bool settled() const { return narrow() && low_solved_; }

  // Where the straight line through both ends meets one, turned a little towards the end that moved less, so
  // that the bracket closes from both sides.
  double next_guess() {
    const double width = high_->inflation - low_.inflation;
    double share = 0.5;
    if (std::isfinite(high_->share) && high_->share > low_.share)
      share = (1.0 - low_.share) / (high_->share - low_.share);
    const double nudge = 0.4 * options_.tolerance * high_->inflation / width;
    below_next_ = !below_next_;
    share += below_next_ ? -nudge : nudge;
    return low_.inflation + std::clamp(share, 0.02, 0.98) * width;
  }

  Problem unsettled() const {
    const Phrase solves = figures_of(solves_);
    if (last_problem_)
      return not_converged(Phrase::worded(
          "The search for the ceiling did not settle after %1 solves: ask for less inflation. The "
          "last solve said: %2",
          {solves, *last_problem_}));
    return not_converged(Phrase::worded(
        "The search for the ceiling did not settle after %1 solves: ask for less inflation, or use "
        "a finer mesh.",
        {solves}));
  }

  const SolveShare& solve_;
  const CeilingSearchOptions& options_;
  SharePoint low_;
  bool low_solved_ = true;  // solved to directly
  std::optional<SharePoint> high_;
  CeilingStop why_high_ = CeilingStop::kLimit;
  bool closed_known_ = false, already_above_ = false, below_next_ = false;
  int solves_ = 0;
  std::optional<Phrase> last_problem_;
};

}  // namespace

Result<CeilingSearch> search_ceiling(const SolveShare& solve, const CeilingSearchOptions& options) {
  return Search(solve, options).run();
}

}  // namespace wrapgauge
