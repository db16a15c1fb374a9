#include "model/study/aim_solver.hpp"

#include <Eigen/QR>
#include <algorithm>
#include <cmath>

#include "model/core/said_problem.hpp"

namespace wrapgauge {
namespace {

constexpr int kSteps = 10, kHalvings = 3;
constexpr double kSmallest_pa = 10.0;  // a step below this changes nothing that shows

struct Trial {
  Eigen::VectorXd x_pa, miss_pa;
  StateReading reading;
  LoadPath path;
};

class AimSearch {
 public:
  AimSearch(const StudyCase& study, const AimUnknowns& unknowns,
            const std::vector<std::optional<Pressure>>& wanted, Progress& progress)
      : study_(study), unknowns_(unknowns), wanted_(wanted), progress_(progress) {
    for (std::size_t c = 0; c < wanted_.size(); ++c)
      if (wanted_[c]) rows_.push_back(c);
  }

  Result<AimSolution> run() {
    auto found = first_trial();
    if (!found) return found.problem();
    Trial best = std::move(found).value();
    Eigen::MatrixXd slope;
    for (int step = 0; step < kSteps && !reached(best); ++step) {
      if (step == 0) {
        auto measured = slope_at(best);
        if (!measured) return measured.problem();
        slope = std::move(measured).value();
      }
      auto next = better(best, slope);
      if (!next) return next.problem();
      if (!*next) break;
      const Eigen::VectorXd moved = (*next)->x_pa - best.x_pa;
      slope += ((*next)->miss_pa - best.miss_pa - slope * moved) * moved.transpose() / moved.squaredNorm();
      best = *std::move(next).value();
    }
    auto reading = study_.read_with_relief(best.path, progress_);
    if (!reading) return reading.problem();
    return AimSolution{reached(best), best.x_pa, std::move(reading).value(), solves_};
  }

 private:
  // None: no equilibrium at these pressures.
  Result<std::optional<Trial>> at(const Eigen::VectorXd& x_pa) {
    std::vector<InflationTarget> targets = study_.targets();
    for (std::size_t g = 0; g < targets.size(); ++g)
      if (const auto variable = unknowns_.variable_of_group[g]) targets[g] = Pressure(x_pa[*variable]);
    ++solves_;
    const auto path = study_.inflate_to(targets, progress_);
    if (!path && path.problem().kind != ProblemKind::kNotConverged) return path.problem();
    if (!path || path->limit_point) return std::optional<Trial>();
    Trial trial{x_pa, Eigen::VectorXd(static_cast<Eigen::Index>(rows_.size())), study_.read(*path), *path};
    for (std::size_t r = 0; r < rows_.size(); ++r)
      trial.miss_pa[static_cast<Eigen::Index>(r)] =
          (trial.reading.figures.chambers[rows_[r]].mean - *wanted_[rows_[r]]).si();
    return std::optional<Trial>(std::move(trial));
  }

  // Contact pressure is a little below the pressure inside: start there and halve until it can be solved.
  Result<Trial> first_trial() {
    Eigen::VectorXd x = Eigen::VectorXd::Zero(unknowns_.count), fed = x;
    for (const std::size_t c : rows_) {
      const auto variable = unknowns_.variable_of_group[index_of(study_.setup().flat.chamber_group[c])];
      if (!variable) continue;
      x[*variable] += wanted_[c]->si();
      fed[*variable] += 1.0;
    }
    x = x.cwiseQuotient(fed.cwiseMax(1.0));
    for (int halving = 0; halving < 5; ++halving, x *= 0.5) {
      auto trial = at(x);
      if (!trial) return trial.problem();
      if (*trial) return *std::move(trial).value();
    }
    if (const auto& misfit = study_.setup().misfit)
      return not_converged(Phrase::worded(
          "No equilibrium was found near the wanted pressures: ask for less, and first correct how "
          "it fits. %1",
          {*misfit}));
    return not_converged(Phrase::worded(
        "No equilibrium was found near the wanted pressures: ask for less, take thicker or stiffer "
        "sheets, or use a finer mesh."));
  }

  bool reached(const Trial& trial) const {
    for (std::size_t r = 0; r < rows_.size(); ++r)
      if (std::abs(trial.miss_pa[static_cast<Eigen::Index>(r)]) > aim_tolerance(*wanted_[rows_[r]]).si())
        return false;
    return true;
  }

  Result<Eigen::MatrixXd> slope_at(const Trial& from) {
    Eigen::MatrixXd slope = Eigen::MatrixXd::Zero(from.miss_pa.size(), from.x_pa.size());
    for (Eigen::Index v = 0; v < from.x_pa.size(); ++v) {
      const double step = std::max(0.1 * from.x_pa[v], 200.0);
      for (const double sign : {1.0, -1.0}) {  // downwards where upwards there is no equilibrium
        Eigen::VectorXd x = from.x_pa;
        x[v] = std::max(0.0, x[v] + sign * step);
        if (x[v] == from.x_pa[v]) break;
        const auto trial = at(x);
        if (!trial) return trial.problem();
        if (!*trial) continue;
        slope.col(v) = ((*trial)->miss_pa - from.miss_pa) / (x[v] - from.x_pa[v]);
        break;
      }
    }
    return slope;
  }

  // The Gauss-Newton step, with variables that lie at 0 and want to go lower left out.
  Eigen::VectorXd step_from(const Trial& from, const Eigen::MatrixXd& slope) const {
    const Eigen::VectorXd uphill = slope.transpose() * from.miss_pa;
    Eigen::MatrixXd free = slope;
    for (Eigen::Index v = 0; v < free.cols(); ++v)
      if (from.x_pa[v] <= 0.0 && uphill[v] >= 0.0) free.col(v).setZero();
    return free.completeOrthogonalDecomposition().solve(-from.miss_pa);
  }

  // None: no step helps.
  Result<std::optional<Trial>> better(const Trial& from, const Eigen::MatrixXd& slope) {
    const Eigen::VectorXd step = step_from(from, slope);
    double share = 1.0;
    for (int halving = 0; halving <= kHalvings; ++halving, share *= 0.5) {
      const Eigen::VectorXd x = (from.x_pa + share * step).cwiseMax(0.0);
      if ((x - from.x_pa).cwiseAbs().maxCoeff() < kSmallest_pa) break;
      auto trial = at(x);
      if (!trial) return trial.problem();
      if (*trial && (*trial)->miss_pa.norm() < from.miss_pa.norm()) return trial;
    }
    return std::optional<Trial>();
  }

  const StudyCase& study_;
  const AimUnknowns& unknowns_;
  const std::vector<std::optional<Pressure>>& wanted_;
  Progress& progress_;
  std::vector<std::size_t> rows_;  // chambers that are wanted
  int solves_ = 0;
};

}  // namespace

Result<AimSolution> solve_aim(const StudyCase& study, const AimUnknowns& unknowns,
                              const std::vector<std::optional<Pressure>>& wanted, Progress& progress) {
  return AimSearch(study, unknowns, wanted, progress).run();
}

}  // namespace wrapgauge
