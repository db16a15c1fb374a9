#include "model/inflation/newton.hpp"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>
#include <optional>

#include "model/inflation/anderson_iteration.hpp"
#include "model/inflation/balance.hpp"
#include "model/inflation/following_pace.hpp"

namespace wrapgauge {
namespace {

class NewtonSolve {
 public:
  NewtonSolve(EquilibriumSystem& system, Factorisation& factorisation, const std::vector<CavityLoad>& loads,
              const NewtonOptions& options)
      : system_(system),
        factorisation_(factorisation),
        loads_(loads),
        options_(options),
        settings_(system.settings()) {
    for (std::size_t g = 0; g < loads.size(); ++g)
      if (loads[g].follows_volume()) filled_.push_back(static_cast<int>(g));
  }

  NewtonResult run(Points3 x, const Progress& progress) {
    Evaluation now = system_.evaluate(x, loads_, TangentKind::kExact);
    std::optional<NewtonEnd> end;
    while (!(end = go_on(x, now, progress))) ++iterations_;
    return result_at(std::move(x), now, factorisation_.failure() ? NewtonEnd::kLibraryFailed : *end);
  }

  Result<bool> is_stiff(const Points3& x) {
    const Evaluation now = system_.evaluate(x, loads_, TangentKind::kExact);
    add_shift(settings_.shift.floor);
    if (factorisation_.is_definite(system_.tangent())) return true;
    const bool stiff = indefinite_direction(now).has_value();
    if (factorisation_.failure()) return *factorisation_.failure();
    return stiff;
  }

 private:
  bool in_balance() const { return share_ <= options_.residual_tolerance; }

  // None when a step was taken.
  std::optional<NewtonEnd> go_on(Points3& x, Evaluation& now, const Progress& progress) {
    share_ = share_of(now);
    if (in_balance() && pace_.slow()) catch_up(x, now);
    pace_.watch(iterations_, share_);
    if (in_balance()) return go_on_in_balance(x, now);
    if (progress.cancelled()) return NewtonEnd::kCancelled;
    if (factorisation_.count() >= options_.last_factorisation) return NewtonEnd::kOutOfWork;
    if (ran_away(now)) return NewtonEnd::kRanAway;
    const bool hopeless =
        pace_.without_better(iterations_) >= settings_.step.hopeless * options_.max_iterations;
    if (hopeless || iterations_ >= options_.max_iterations) return NewtonEnd::kTooManyIterations;
    if (!advance(x, now)) return NewtonEnd::kStalled;
    return std::nullopt;
  }

  // Each node is in balance: are all of them together, and are the asked volumes met?
  std::optional<NewtonEnd> go_on_in_balance(Points3& x, Evaluation& now) {
    const bool tries = !sums_met(x, now) && sum_steps_++ < settings_.balance.sum_steps;
    if (tries && advance(x, now)) return std::nullopt;
    if (volumes_met(now)) return NewtonEnd::kConverged;
    if (correct_volumes(x, now)) return std::nullopt;
    return NewtonEnd::kTooManyIterations;
  }

  NewtonResult result_at(Points3 x, const Evaluation& now, NewtonEnd end) const {
    NewtonResult result;
    result.end = end;
    result.iterations = iterations_;
    result.residual_n = largest_residual_n(now);
    result.positions_m = std::move(x);
    result.group_volume_m3 = now.group_volume_m3;
    result.group_pressure_pa.resize(static_cast<Eigen::Index>(loads_.size()));
    for (std::size_t g = 0; g < loads_.size(); ++g)
      result.group_pressure_pa(g) = loads_[g].pressure_at(now.group_volume_m3(g));
    return result;
  }

  // What the factors at hand were made of, as far as what follows the volume needs it.
  struct Fillings {
    Eigen::MatrixXd volume_gradient_m2;
    Eigen::VectorXd group_volume_m3;
  };
  // A shape with areas, limits and normals of its own.
  struct Shape {
    Points3 positions_m;
    Evaluation evaluation;
    TissueContact tissue;
    double share;  // out of balance
  };

  // Balanced with areas, limits and normals that lag behind: is it with its own?
  void catch_up(const Points3& x, Evaluation& now) {
    system_.refresh(x);
    now = system_.evaluate(x, loads_, TangentKind::kExact);
    tangent_is_exact_ = true;
    share_ = share_of(now);
  }

  bool near_balance() const {
    const bool near = share_ <= (iterations_ >= settings_.full_step.first ? settings_.full_step.near_share
                                                                          : settings_.full_step.close_share);
    return near && exact_ && !system_.tissue().nodes().empty();
  }

  // Steps with the factors at hand on the equations with areas, limits and normals of their own, mixed: an
  // evaluation and a solve each. `held` is the first one. False when they bring no better balance.
  bool chord_steps(Points3& x, Evaluation& now, const Eigen::VectorXd& held) {
    const FullStepSettings& at = settings_.full_step;
    const TissueContact kept = system_.tissue();
    std::optional<Shape> best;
    double best_share = share_, gained_share = share_;
    int last_gain = 0;  // the pass that last took off a fair share
    AndersonIteration mixing(at.mixing_depth);
    Eigen::VectorXd place = Eigen::Map<const Eigen::VectorXd>(x.data(), x.size()), step = held;
    for (int pass = 0; pass < at.chords; ++pass) {
      cap(step);
      place = mixing.next(place, place + step);
      Shape shape = shape_at(Eigen::Map<const Points3>(place.data(), x.rows(), 3), TangentKind::kNone);
      if (shape.share <= at.chord_share * gained_share) {
        gained_share = shape.share;
        last_gain = pass;
      }
      const bool goes_on = shape.share > at.chord_tolerance * options_.residual_tolerance &&
                           shape.share <= at.chord_worse * best_share && pass - last_gain < at.chord_patience;
      const auto change = goes_on ? solve_with_fillings(-shape.evaluation.gradient_n) : std::nullopt;
      if (shape.share < best_share) {
        best_share = shape.share;
        best = std::move(shape);
      }
      if (!change) break;
      step = *change;
    }
    if (best_share > at.chords_share * share_) {
      system_.tissue() = kept;
      return false;
    }
    take(std::move(*best), TangentKind::kNone, x, now);
    return true;
  }

  Shape shape_at(Points3 positions_m, TangentKind kind) {
    system_.refresh(positions_m);
    Evaluation evaluation = system_.evaluate(positions_m, loads_, kind);
    const double share = share_of(evaluation);
    return {std::move(positions_m), std::move(evaluation), system_.tissue(), share};
  }

  void take(Shape shape, TangentKind kind, Points3& x, Evaluation& now) {
    tangent_is_exact_ = kind == TangentKind::kExact;
    x = std::move(shape.positions_m);
    now = std::move(shape.evaluation);
    system_.tissue() = std::move(shape.tissue);
    lower_shift();
  }

  // A step on the full equations: (H + E) d = -gradient, E what the gradient changes by because areas and
  // friction limits follow. `held` is the step without E. False when it brings no better balance.
  bool full_step(Points3& x, Evaluation& now, const Eigen::VectorXd& held) {
    std::optional<Eigen::VectorXd> direction = following_direction(x, held);
    if (!direction) return false;
    cap(*direction);
    const TissueContact kept = system_.tissue();
    Shape shape =
        shape_at(x + Eigen::Map<const Points3>(direction->data(), x.rows(), 3), TangentKind::kExact);
    if (shape.share > settings_.full_step.share * share_) {
      system_.tissue() = kept;
      return false;
    }
    take(std::move(shape), TangentKind::kExact, x, now);
    return true;
  }

  // d = H^-1 (-gradient - E d); the last exact_direction(), `held`, has left the factors of H.
  std::optional<Eigen::VectorXd> following_direction(const Points3& x, const Eigen::VectorXd& held) {
    AndersonIteration mixing(settings_.full_step.mixing_depth);
    Eigen::VectorXd direction = held;
    for (int pass = 0; pass < settings_.full_step.mixing_passes; ++pass) {
      const Eigen::Map<const Points3> way(direction.data(), x.rows(), 3);
      const auto change = solve_with_fillings(system_.following(x, way));
      if (!change) return std::nullopt;
      const Eigen::VectorXd image = held - *change;
      if ((image - direction).norm() <= settings_.full_step.mixed_enough * held.norm()) return image;
      direction = mixing.next(direction, image);
    }
    return direction;
  }

  void lower_shift() {
    const double ease = raised_ ? settings_.shift.ease_raised : settings_.shift.ease;
    shift_ = std::max(settings_.shift.floor, ease * shift_);
  }

  // One step; false when no step lowers the potential.
  bool advance(Points3& x, Evaluation& now) {
    for (; shift_ <= settings_.shift.ceiling; shift_ *= settings_.shift.after_failed_direction) {
      std::optional<Eigen::VectorXd> direction = newton_direction(x, now);
      if (factorisation_.failure()) return false;
      if (!direction) continue;
      if (near_balance() &&
          (chord_steps(x, now, *direction) || (!pace_.slow() && full_step(x, now, *direction))))
        return true;
      cap(*direction);
      const double slope = now.gradient_n.dot(*direction);
      if (slope >= 0.0) continue;
      if (const std::optional<double> length = line_search(x, now, *direction, slope)) {
        x += *length * Eigen::Map<const Points3>(direction->data(), x.rows(), 3);
        system_.refresh(x, pace_.share());
        now = system_.evaluate(x, loads_, TangentKind::kExact);
        tangent_is_exact_ = true;
        if (*length < settings_.shift.short_step)
          shift_ = std::min(settings_.shift.ceiling, settings_.shift.after_short_step * shift_);
        else
          lower_shift();
        return true;
      }
    }
    return false;
  }

  // A liquid gives way a little: hand its pressure on until the asked volume is met.
  bool volumes_met(const Evaluation& now) const {
    for (int g : filled_)
      if (loads_[g].is_liquid() && std::abs(now.group_volume_m3(g) - loads_[g].volume_m3()) >
                                       settings_.balance.volume_tolerance * std::abs(loads_[g].volume_m3()))
        return false;
    return true;
  }
  bool correct_volumes(const Points3& x, Evaluation& now) {
    if (corrections_++ == settings_.balance.volume_corrections) return false;
    for (int g : filled_)
      if (loads_[g].is_liquid()) {
        const double v = now.group_volume_m3(g);
        loads_[g] =
            CavityLoad::liquid(loads_[g].volume_m3(), loads_[g].pressure_at(v), loads_[g].stiffness_at(v));
      }
    now = system_.evaluate(x, loads_, TangentKind::kExact);
    tangent_is_exact_ = true;
    return true;
  }

  void add_shift(double shift) {
    const Eigen::VectorXd& area = system_.node_area_m2();
    for (int node = 0; node < area.size(); ++node)
      system_.tangent().add_diagonal(node, shift * area(node) / settings_.shift.node_area_m2);
  }

  void steady_tangent(const Points3& x) {  // so that its steps do not go too far
    tangent_is_exact_ = false;
    system_.resist_sliding(
        x, options_.careful ? settings_.step.careful_sliding_share : settings_.step.sliding_share);
    add_shift(shift_);
  }

  // Exact tangent (with the chamber terms) where it is or can be made definite, else the projected one.
  std::optional<Eigen::VectorXd> newton_direction(const Points3& x, Evaluation& now) {
    raised_ = false;
    exact_ = true;
    if (share_ <= settings_.step.far_share)
      if (auto direction = exact_direction(x, now)) return direction;
    exact_ = false;
    now = system_.evaluate(x, loads_, TangentKind::kProjected);
    steady_tangent(x);
    const Digits digits = share_ > settings_.step.beyond_single ? Digits::kDouble : Digits::kSingle;
    if (!factorisation_.factor_definite(system_.tangent(), digits)) return std::nullopt;
    return step_for(now, 0);
  }

  std::optional<Eigen::VectorXd> exact_direction(const Points3& x, Evaluation& now) {
    if (!tangent_is_exact_) now = system_.evaluate(x, loads_, TangentKind::kExact);
    steady_tangent(x);
    if (factorisation_.factor_definite(system_.tangent(), Digits::kSingle)) return step_for(now, 0);
    if (auto direction = indefinite_direction(now)) return direction;
    for (double raised = shift_; raised < settings_.shift.for_exact;) {
      const double next = std::max(settings_.shift.first_raise, settings_.shift.raise * raised);
      add_shift(next - raised);
      raised = next;
      if (!factorisation_.factor_definite(system_.tangent(), Digits::kSingle)) continue;
      shift_ = raised;
      raised_ = true;
      return step_for(now, 0);
    }
    return std::nullopt;
  }

  // By the tangent as it is, where no more directions are soft than the groups that follow their volume
  // stiffen.
  std::optional<Eigen::VectorXd> indefinite_direction(const Evaluation& now) {
    if (filled_.empty()) return std::nullopt;
    const std::optional<int> negative = factorisation_.factor_indefinite(system_.tangent());
    if (!negative || *negative > static_cast<int>(filled_.size())) return std::nullopt;
    return step_for(now, *negative);
  }

  std::optional<Eigen::VectorXd> step_for(const Evaluation& now, int negative_pivots) {
    factored_ = {now.volume_gradient_m2, now.group_volume_m3};
    negative_pivots_ = negative_pivots;
    return solve_with_fillings(-now.gradient_n);
  }

  // (H + G K G^T) d = side by Woodbury. With H indefinite the sum is definite exactly when
  // K^-1 + G^T H^-1 G has as many negative eigenvalues as H has (Haynsworth's inertia formula).
  std::optional<Eigen::VectorXd> solve_with_fillings(const Eigen::VectorXd& side) const {
    const auto k = static_cast<Eigen::Index>(filled_.size());
    Eigen::MatrixXd sides(side.size(), 1 + k);
    sides.col(0) = side;
    for (Eigen::Index j = 0; j < k; ++j) sides.col(1 + j) = factored_.volume_gradient_m2.col(filled_[j]);
    const std::optional<Eigen::MatrixXd> solved = factorisation_.solve(sides);
    if (!solved) return std::nullopt;
    if (k == 0) return solved->col(0);
    Eigen::MatrixXd capacitance = sides.rightCols(k).transpose() * solved->rightCols(k);
    for (Eigen::Index j = 0; j < k; ++j) {
      const int g = filled_[j];
      capacitance(j, j) += 1.0 / loads_[g].stiffness_at(factored_.group_volume_m3(g));
    }
    const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> eigen(capacitance);
    if (eigen.info() != Eigen::Success) return std::nullopt;
    if ((eigen.eigenvalues().array() < 0.0).count() != negative_pivots_) return std::nullopt;
    const Eigen::VectorXd held_back = sides.rightCols(k).transpose() * solved->col(0);
    return solved->col(0) - solved->rightCols(k) * capacitance.fullPivLu().solve(held_back);
  }

  void cap(Eigen::VectorXd& direction) const {
    double largest = 0.0;
    for (Eigen::Index node = 0; node < direction.size() / 3; ++node)
      largest = std::max(largest, direction.segment<3>(3 * node).norm());
    const double cap_m = options_.careful ? settings_.step.careful_cap_m : settings_.step.cap_m;
    if (largest > cap_m) direction *= cap_m / largest;
  }

  std::optional<double> line_search(const Points3& x, const Evaluation& now, const Eigen::VectorXd& direction,
                                    double slope) {
    const Eigen::Map<const Points3> step(direction.data(), x.rows(), 3);
    const double rounding = settings_.step.rounding * (1.0 + std::abs(now.energy_j));
    double length = 1.0;
    for (int halving = 0; halving < settings_.step.halvings; ++halving, length *= 0.5) {
      const Evaluation trial =
          system_.evaluate(x + length * step, loads_, TangentKind::kNone, TangentKind::kExact);
      if (trial.energy_j <= now.energy_j + settings_.step.descent * length * slope + rounding) return length;
    }
    return std::nullopt;
  }

  double share_of(const Evaluation& now) const { return out_of_balance(system_, now, loads_); }
  bool sums_met(const Points3& x, const Evaluation& now) const {
    return sum_out_of_balance(system_, now, x) <= settings_.balance.sum_tolerance;
  }
  bool ran_away(const Evaluation& now) const {
    return !std::isfinite(now.energy_j) ||
           (now.group_volume_m3.size() > 0 && now.group_volume_m3.maxCoeff() > options_.volume_cap_m3);
  }

  EquilibriumSystem& system_;
  Factorisation& factorisation_;
  std::vector<CavityLoad> loads_;
  NewtonOptions options_;
  const SolverSettings& settings_;
  std::vector<int> filled_;
  int iterations_ = 0, corrections_ = 0, sum_steps_ = 0;
  double shift_ = settings_.shift.floor;
  bool exact_ = true, raised_ = false;  // this step's tangent is the exact one, its shift had to be raised
  double share_ = 0.0;                  // out of balance now
  FollowingPace pace_{settings_.following};
  Fillings factored_;
  int negative_pivots_ = 0;       // of the factors at hand
  bool tangent_is_exact_ = true;  // the system's tangent belongs to the present shape, without shift
};

}  // namespace

NewtonResult find_equilibrium(EquilibriumSystem& system, Factorisation& factorisation,
                              const std::vector<CavityLoad>& loads, Points3 start_m,
                              const NewtonOptions& options, const Progress& progress) {
  return NewtonSolve(system, factorisation, loads, options).run(std::move(start_m), progress);
}

Result<bool> keeps_its_shape(EquilibriumSystem& system, Factorisation& factorisation,
                             const std::vector<CavityLoad>& loads, const Points3& positions_m) {
  return NewtonSolve(system, factorisation, loads, {}).is_stiff(positions_m);
}

}  // namespace wrapgauge
