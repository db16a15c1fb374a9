#pragma once
// Sparse Cholesky of the tangent: analysed once by CHOLMOD (METIS order), factored multifrontally in two
// halves at once. Results do not depend on the machine's settings.

#include <memory>

#include "model/inflation/block_matrix.hpp"

namespace wrapgauge {

// kSingle takes half the time: solutions are good to a thousandth (of their side's norm, put back into the
// equations), which is enough for a step whose end is measured by itself.
enum class Digits { kSingle, kDouble };

class Factorisation {
 public:
  explicit Factorisation(const BlockMatrix& pattern);
  ~Factorisation();
  Factorisation(const Factorisation&) = delete;
  Factorisation& operator=(const Factorisation&) = delete;

  // False when the matrix is not positive definite to these digits.
  bool factor_definite(const BlockMatrix& matrix, Digits digits = Digits::kDouble);
  // The same question in double precision, in much less room: no factors are at hand afterwards.
  bool is_definite(const BlockMatrix& matrix);
  // LDL^T without pivoting; returns the number of negative pivots, or -1 when it broke down.
  int factor_indefinite(const BlockMatrix& matrix);
  // With the last matrix that was factored, whatever has become of it since.
  Eigen::MatrixXd solve(const Eigen::MatrixXd& right_hand_sides);

  int count() const { return count_; }

 private:
  struct Handles;
  Eigen::MatrixXd solve_in_single(const Eigen::MatrixXd& right_hand_sides);
  Eigen::MatrixXd solve_indefinite(const Eigen::MatrixXd& right_hand_sides) const;

  std::unique_ptr<Handles> handles_;
  int count_ = 0;
};

}  // namespace wrapgauge
