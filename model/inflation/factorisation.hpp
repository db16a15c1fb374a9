#pragma once
// Sparse Cholesky of the tangent: analysed once by CHOLMOD (METIS order), factored multifrontally in two
// halves at once. Results do not depend on the machine's settings.

#include <memory>
#include <optional>

#include "model/core/result.hpp"
#include "model/inflation/block_matrix.hpp"
#include "model/inflation/solver_settings.hpp"

namespace wrapgauge {

// kSingle takes half the time: solutions are good to a thousandth (of their side's norm, put back into the
// equations), which is enough for a step whose end is measured by itself.
enum class Digits { kSingle, kDouble };

class Factorisation {
 public:
  ~Factorisation();
  Factorisation(Factorisation&&) noexcept;
  Factorisation& operator=(Factorisation&&) noexcept;

  // False when the matrix is not positive definite to these digits.
  bool factor_definite(const BlockMatrix& matrix, Digits digits = Digits::kDouble);
  // The same question in double precision, in much less room: no factors are at hand afterwards.
  bool is_definite(const BlockMatrix& matrix);
  // LDL^T without pivoting; returns the number of negative pivots. None when it broke down, or failure().
  [[nodiscard]] std::optional<int> factor_indefinite(const BlockMatrix& matrix);
  // With the last matrix that was factored, whatever has become of it since. None when there are no factors,
  // when corrections do not converge and the matrix is not definite in double precision, or failure().
  [[nodiscard]] std::optional<Eigen::MatrixXd> solve(const Eigen::MatrixXd& right_hand_sides);

  // Set once a call of the library has failed: the answer that was none then says nothing about the matrix.
  const std::optional<Problem>& failure() const { return failure_; }
  int count() const { return count_; }

 private:
  friend Result<Factorisation> make_factorisation(const BlockMatrix& pattern, const FactorSettings& settings);
  struct Handles;
  explicit Factorisation(std::unique_ptr<Handles> handles);
  std::optional<Eigen::MatrixXd> solve_in_single(const Eigen::MatrixXd& right_hand_sides);
  std::optional<Eigen::MatrixXd> solve_indefinite(const Eigen::MatrixXd& right_hand_sides);

  std::unique_ptr<Handles> handles_;
  std::optional<Problem> failure_;
  int count_ = 0;
};

// Problem: the pattern could not be ordered or analysed.
Result<Factorisation> make_factorisation(const BlockMatrix& pattern, const FactorSettings& settings = {});

}  // namespace wrapgauge
