#pragma once
// Sparse Cholesky of the tangent: analysed once and solved with CHOLMOD (METIS order), factored
// multifrontally in two halves at once. Results do not depend on the machine's settings.

#include <memory>

#include "model/inflation/block_matrix.hpp"

namespace wrapgauge {

class Factorisation {
 public:
  explicit Factorisation(const BlockMatrix& pattern);
  ~Factorisation();
  Factorisation(const Factorisation&) = delete;
  Factorisation& operator=(const Factorisation&) = delete;

  // False when the matrix is not positive definite.
  bool factor_definite(const BlockMatrix& matrix);
  // LDL^T without pivoting; returns the number of negative pivots, or -1 when it broke down.
  int factor_indefinite(const BlockMatrix& matrix);
  Eigen::MatrixXd solve(const Eigen::MatrixXd& right_hand_sides) const;

  int count() const { return count_; }

 private:
  struct Handles;
  std::unique_ptr<Handles> handles_;
  int count_ = 0;
};

}  // namespace wrapgauge
