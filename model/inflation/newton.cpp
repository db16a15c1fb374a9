#include "model/inflation/newton.hpp"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace wrapgauge {
namespace {

// Proximal shift on the diagonal, N/m for a node of 14 mm2 (4 mm mesh): in the matrix only, so the answer is
// the same. It cures modes that nothing holds, such as a frictionless cuff turning on a round limb, and
// carries the step across a buckling sheet.
constexpr double kShiftFloor = 1e-3;
constexpr double kShiftFirstRaise = 0.05;
constexpr double kShiftRaise = 6.0;
constexpr double kShiftForExact = 20.0;  // above: the projected tangent is the better one
constexpr double kShiftCeiling = 1e7;
constexpr double kShiftReferenceArea = 14e-6;
// Out of balance by this many times the pressure: the exact tangent is hardly ever definite there.
constexpr double kFarShare = 30.0;
// Iterations after which areas and limits that go to and fro are followed half way, then a quarter.
constexpr int kLagHalf = 15, kLagQuarter = 35;
constexpr int kVolumeCorrections = 8;

class NewtonSolve {
 public:
  NewtonSolve(EquilibriumSystem& system, Factorisation& factorisation, const std::vector<CavityLoad>& loads,
              const NewtonOptions& options)
      : system_(system), factorisation_(factorisation), loads_(loads), options_(options) {
    for (std::size_t g = 0; g < loads.size(); ++g)
      if (loads[g].follows_volume()) filled_.push_back(static_cast<int>(g));
  }

  NewtonResult run(Points3 x, const Progress& progress) {
    NewtonResult result;
    Evaluation now = system_.evaluate(x, loads_, TangentKind::kExact);
    for (;; ++iterations_) {
      share_ = out_of_balance(now);
      if (share_ <= options_.residual_tolerance) {
        if (volumes_met(now)) result.end = NewtonEnd::kConverged;
        if (!result.converged() && correct_volumes(x, now)) continue;
      } else if (progress.cancelled()) {
        result.end = NewtonEnd::kCancelled;
      } else if (ran_away(now)) {
        result.end = NewtonEnd::kRanAway;
      } else if (iterations_ < options_.max_iterations) {
        if (advance(x, now)) continue;
        result.end = NewtonEnd::kStalled;
      }
      break;
    }
    result.iterations = iterations_;
    result.residual_n = largest_residual(now);
    result.positions_m = std::move(x);
    result.group_volume_m3 = now.group_volume_m3;
    result.group_pressure_pa.resize(static_cast<Eigen::Index>(loads_.size()));
    for (std::size_t g = 0; g < loads_.size(); ++g)
      result.group_pressure_pa(g) = loads_[g].pressure_at(now.group_volume_m3(g));
    return result;
  }

 private:
  // One step; false when no step lowers the potential.
  bool advance(Points3& x, Evaluation& now) {
    for (; shift_ <= kShiftCeiling; shift_ *= 10.0) {
      std::optional<Eigen::VectorXd> direction = newton_direction(x, now);
      if (!direction) continue;
      cap(*direction);
      const double slope = now.gradient_n.dot(*direction);
      if (slope >= 0.0) continue;
      if (const std::optional<double> length = line_search(x, now, *direction, slope)) {
        x += *length * Eigen::Map<const Points3>(direction->data(), x.rows(), 3);
        behind_pa_ = system_.refresh(x, lag_weight());
        now = system_.evaluate(x, loads_, TangentKind::kExact);
        tangent_is_exact_ = true;
        // A shift that had to be raised is likely to be needed again.
        shift_ = *length < 0.5 ? std::min(kShiftCeiling, 4.0 * shift_)
                               : std::max(kShiftFloor, (raised_ ? 0.5 : 0.2) * shift_);
        return true;
      }
    }
    return false;
  }

  double lag_weight() const { return iterations_ < kLagHalf ? 1.0 : iterations_ < kLagQuarter ? 0.5 : 0.25; }

  // A liquid gives way a little: hand its pressure on until the asked volume is met.
  bool volumes_met(const Evaluation& now) const {
    for (int g : filled_)
      if (loads_[g].is_liquid() && std::abs(now.group_volume_m3(g) - loads_[g].volume_m3()) >
                                       options_.volume_tolerance * std::abs(loads_[g].volume_m3()))
        return false;
    return true;
  }
  bool correct_volumes(const Points3& x, Evaluation& now) {
    if (corrections_++ == kVolumeCorrections) return false;
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
      system_.tangent().add_diagonal(node, shift * area(node) / kShiftReferenceArea);
  }

  // Exact tangent (with the chamber terms) where it is or can be made definite, else the projected one.
  std::optional<Eigen::VectorXd> newton_direction(const Points3& x, const Evaluation& now) {
    raised_ = false;
    if (share_ <= kFarShare)
      if (auto direction = exact_direction(x, now)) return direction;
    system_.evaluate(x, loads_, TangentKind::kProjected);
    tangent_is_exact_ = false;
    add_shift(shift_);
    if (!factorisation_.factor_definite(system_.tangent())) return std::nullopt;
    return solve_with_fillings(now, 0);
  }

  std::optional<Eigen::VectorXd> exact_direction(const Points3& x, const Evaluation& now) {
    if (!tangent_is_exact_) system_.evaluate(x, loads_, TangentKind::kExact);
    tangent_is_exact_ = false;
    add_shift(shift_);
    if (factorisation_.factor_definite(system_.tangent())) return solve_with_fillings(now, 0);
    if (!filled_.empty()) {
      const int negative = factorisation_.factor_indefinite(system_.tangent());
      if (negative >= 0 && negative <= static_cast<int>(filled_.size()))
        if (auto direction = solve_with_fillings(now, negative)) return direction;
    }
    for (double raised = shift_; raised < kShiftForExact;) {
      const double next = std::max(kShiftFirstRaise, kShiftRaise * raised);
      add_shift(next - raised);
      raised = next;
      if (!factorisation_.factor_definite(system_.tangent())) continue;
      shift_ = raised;
      raised_ = true;
      return solve_with_fillings(now, 0);
    }
    return std::nullopt;
  }

  // (H + G K G^T) d = -gradient by Woodbury. With H indefinite the sum is definite exactly when
  // K^-1 + G^T H^-1 G has as many negative eigenvalues as H has (Haynsworth's inertia formula).
  std::optional<Eigen::VectorXd> solve_with_fillings(const Evaluation& now, int negative_pivots) {
    const auto k = static_cast<Eigen::Index>(filled_.size());
    Eigen::MatrixXd sides(now.gradient_n.size(), 1 + k);
    sides.col(0) = -now.gradient_n;
    for (Eigen::Index j = 0; j < k; ++j) sides.col(1 + j) = now.volume_gradient_m2.col(filled_[j]);
    const Eigen::MatrixXd solved = factorisation_.solve(sides);
    if (k == 0) return solved.col(0);
    Eigen::MatrixXd capacitance = sides.rightCols(k).transpose() * solved.rightCols(k);
    for (Eigen::Index j = 0; j < k; ++j) {
      const int g = filled_[j];
      capacitance(j, j) += 1.0 / loads_[g].stiffness_at(now.group_volume_m3(g));
    }
    const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> eigen(capacitance);
    if ((eigen.eigenvalues().array() < 0.0).count() != negative_pivots) return std::nullopt;
    const Eigen::VectorXd held_back = sides.rightCols(k).transpose() * solved.col(0);
    return solved.col(0) - solved.rightCols(k) * capacitance.fullPivLu().solve(held_back);
  }

  void cap(Eigen::VectorXd& direction) const {
    double largest = 0.0;
    for (Eigen::Index node = 0; node < direction.size() / 3; ++node)
      largest = std::max(largest, direction.segment<3>(3 * node).norm());
    if (largest > options_.step_cap_m) direction *= options_.step_cap_m / largest;
  }

  std::optional<double> line_search(const Points3& x, const Evaluation& now, const Eigen::VectorXd& direction,
                                    double slope) {
    const Eigen::Map<const Points3> step(direction.data(), x.rows(), 3);
    // Near the minimum the potential's own rounding hides the descent.
    const double rounding = 1e-13 * (1.0 + std::abs(now.energy_j));
    double length = 1.0;
    for (int halving = 0; halving < 12; ++halving, length *= 0.5) {
      const Evaluation trial = system_.evaluate(x + length * step, loads_, TangentKind::kNone);
      if (trial.energy_j <= now.energy_j + 1e-4 * length * slope + rounding) return length;
    }
    return std::nullopt;
  }

  double pressure_scale(const Evaluation& now) const {
    double scale = options_.pressure_floor_pa;
    for (std::size_t g = 0; g < loads_.size(); ++g)
      scale = std::max(scale, std::abs(loads_[g].pressure_at(now.group_volume_m3(g))));
    return scale;
  }
  // Largest nodal residual against pressure x nodal area, with what areas and limits are still behind.
  double out_of_balance(const Evaluation& now) const {
    const double scale = pressure_scale(now);
    const double share = behind_pa_ / scale;
    double worst = 0.0;
    for (Eigen::Index node = 0; node < now.gradient_n.size() / 3; ++node)
      worst = std::max(worst,
                       now.gradient_n.segment<3>(3 * node).norm() / (scale * system_.node_area_m2()(node)));
    return std::isfinite(now.energy_j) ? share + worst : std::numeric_limits<double>::infinity();
  }
  static double largest_residual(const Evaluation& now) {
    double residual = 0.0;
    for (Eigen::Index node = 0; node < now.gradient_n.size() / 3; ++node)
      residual = std::max(residual, now.gradient_n.segment<3>(3 * node).norm());
    return residual;
  }
  bool ran_away(const Evaluation& now) const {
    return !std::isfinite(now.energy_j) ||
           (now.group_volume_m3.size() > 0 && now.group_volume_m3.maxCoeff() > options_.volume_cap_m3);
  }

  EquilibriumSystem& system_;
  Factorisation& factorisation_;
  std::vector<CavityLoad> loads_;
  NewtonOptions options_;
  std::vector<int> filled_;
  int iterations_ = 0, corrections_ = 0;
  double shift_ = kShiftFloor;
  bool raised_ = false;           // this step's shift had to be raised
  double share_ = 0.0;            // out of balance now
  double behind_pa_ = 0.0;        // what areas and friction limits are behind the present shape
  bool tangent_is_exact_ = true;  // the system's tangent belongs to the present shape, without shift
};

}  // namespace

NewtonResult find_equilibrium(EquilibriumSystem& system, Factorisation& factorisation,
                              const std::vector<CavityLoad>& loads, Points3 start_m,
                              const NewtonOptions& options, const Progress& progress) {
  return NewtonSolve(system, factorisation, loads, options).run(std::move(start_m), progress);
}

}  // namespace wrapgauge
