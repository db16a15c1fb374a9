#include "model/inflation/newton.hpp"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace wrapgauge {
namespace {

// Proximal shift on the diagonal, N/m for a node of 14 mm2 (4 mm mesh): in the matrix only, so the answer is
// the same; it cures modes that nothing holds, such as a frictionless cuff turning on a round limb.
constexpr double kShiftStart = 0.1;
constexpr double kShiftFloor = 1e-3;
constexpr double kShiftCeiling = 1e7;
constexpr double kShiftReferenceArea = 14e-6;

class NewtonSolve {
 public:
  NewtonSolve(EquilibriumSystem& system, Factorisation& factorisation, const std::vector<CavityLoad>& loads,
              const NewtonOptions& options)
      : system_(system), factorisation_(factorisation), loads_(loads), options_(options) {
    for (std::size_t g = 0; g < loads.size(); ++g)
      if (loads[g].bulk_pa_per_m3 > 0.0) filled_.push_back(static_cast<int>(g));
  }

  NewtonResult run(Points3 x, const Progress& progress) {
    NewtonResult result;
    Evaluation now = system_.evaluate(x, loads_, TangentKind::kExact);
    for (result.iterations = 0;; ++result.iterations) {
      result.residual_n = largest_residual(now);
      if (largest_share(now) <= options_.residual_tolerance)
        result.end = NewtonEnd::kConverged;
      else if (progress.cancelled())
        result.end = NewtonEnd::kCancelled;
      else if (ran_away(now))
        result.end = NewtonEnd::kRanAway;
      else if (result.iterations < options_.max_iterations) {
        if (advance(x, now)) continue;
        result.end = NewtonEnd::kStalled;
      }
      break;
    }
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
        now = system_.evaluate(x, loads_, TangentKind::kExact);
        tangent_is_exact_ = true;
        shift_ = *length >= 0.5 ? std::max(kShiftFloor, 0.1 * shift_) : std::min(kShiftCeiling, 4.0 * shift_);
        return true;
      }
    }
    shift_ = kShiftStart;
    return false;
  }

  void add_shift() {
    const Eigen::VectorXd& area = system_.node_area_m2();
    for (int node = 0; node < area.size(); ++node)
      system_.tangent().add_diagonal(node, shift_ * area(node) / kShiftReferenceArea);
  }

  // Exact tangent where it is definite (with the chamber terms), else the projected one.
  std::optional<Eigen::VectorXd> newton_direction(const Points3& x, const Evaluation& now) {
    if (!tangent_is_exact_) system_.evaluate(x, loads_, TangentKind::kExact);
    tangent_is_exact_ = false;
    add_shift();
    if (factorisation_.factor_definite(system_.tangent())) return solve_with_fillings(now, 0);
    if (!filled_.empty()) {
      const int negative = factorisation_.factor_indefinite(system_.tangent());
      if (negative >= 0 && negative <= static_cast<int>(filled_.size()))
        if (auto direction = solve_with_fillings(now, negative)) return direction;
    }
    system_.evaluate(x, loads_, TangentKind::kProjected);
    add_shift();
    if (!factorisation_.factor_definite(system_.tangent())) return std::nullopt;
    return solve_with_fillings(now, 0);
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
    for (Eigen::Index j = 0; j < k; ++j) capacitance(j, j) += 1.0 / loads_[filled_[j]].bulk_pa_per_m3;
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
  double largest_share(const Evaluation& now) const {
    const double scale = pressure_scale(now);
    double share = 0.0;
    for (Eigen::Index node = 0; node < now.gradient_n.size() / 3; ++node)
      share = std::max(share,
                       now.gradient_n.segment<3>(3 * node).norm() / (scale * system_.node_area_m2()(node)));
    return std::isfinite(now.energy_j) ? share : std::numeric_limits<double>::infinity();
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
  const std::vector<CavityLoad>& loads_;
  NewtonOptions options_;
  std::vector<int> filled_;
  double shift_ = kShiftStart;
  bool tangent_is_exact_ = true;  // the system's tangent belongs to the present shape, without shift
};

}  // namespace

NewtonResult find_equilibrium(EquilibriumSystem& system, Factorisation& factorisation,
                              const std::vector<CavityLoad>& loads, Points3 start_m,
                              const NewtonOptions& options, const Progress& progress) {
  return NewtonSolve(system, factorisation, loads, options).run(std::move(start_m), progress);
}

}  // namespace wrapgauge
