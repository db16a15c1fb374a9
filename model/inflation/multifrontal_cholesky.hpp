#pragma once
// The numeric half of a sparse Cholesky factorisation A = L L^T, multifrontal on supernodes. Each supernode's
// front takes over what its children left to it, factors its own columns densely and leaves the rest
// to its parent. Two halves of the tree are worked on at once; every front adds its children up in one order,
// so the result does not depend on how many threads there are. In double or single precision, which takes
// half the time and room and keeps about six digits less the condition's.

#include <Eigen/Core>
#include <array>
#include <atomic>
#include <functional>
#include <memory>
#include <vector>

#include "model/inflation/front_kernels.hpp"
#include "model/inflation/front_tree.hpp"

namespace wrapgauge {

template <class Real>
class MultifrontalCholesky {
 public:
  explicit MultifrontalCholesky(std::shared_ptr<const FrontTree> tree);

  // `values`: of A, in the order of the pattern. False when A is not positive definite to this precision;
  // solve() is then of no use.
  bool factor(const std::vector<double>& values);
  // The same answer without the factors: each front's columns are forgotten once its parent has the rest.
  bool is_definite(const std::vector<double>& values);

  // A^-1 times each column of `sides`, by what factor() has found.
  Eigen::MatrixXd solve(const Eigen::MatrixXd& sides) const;

 private:
  using Matrix = Eigen::Matrix<Real, Eigen::Dynamic, Eigen::Dynamic>;
  using Vector = Eigen::Matrix<Real, Eigen::Dynamic, 1>;
  using Part = FrontTree::Part;

  // The columns of a front: of the factor, or room that is used again.
  using Columns = std::function<Real*(int s)>;
  bool factor_parts(const std::vector<double>& values, const std::array<Columns, 3>& columns);
  // Stops where `definite` is found false, here or by the other thread.
  void factor_part(const Part& part, const std::vector<double>& values, const Columns& columns,
                   std::atomic<bool>& definite);
  bool factor_front(int s, const std::vector<double>& values, Real* block);
  void take_over(int child, Real* block, Real* rest_of_parent, bool into_columns) const;
  // L x = x and L^T x = x on the columns of a part, in the order of the factor.
  void forward(const Part& part, Matrix& x) const;
  void backward(const Part& part, Matrix& x) const;
  const Real* block_of(int s) const { return factor_.data() + tree_->layout().value_start[s]; }
  Real* left_over(int s) { return arenas_[tree_->part_of(s)].get() + tree_->front(s).left_over; }
  const Real* left_over(int s) const { return arenas_[tree_->part_of(s)].get() + tree_->front(s).left_over; }

  std::shared_ptr<const FrontTree> tree_;
  FrontKernels<Real> kernels_ = front_kernels<Real>().back();
  std::vector<Real> factor_;                     // of L, in the tree's layout; none before factor()
  std::vector<std::unique_ptr<Real[]>> arenas_;  // what supernodes leave to their parents, a part each
};

extern template class MultifrontalCholesky<float>;
extern template class MultifrontalCholesky<double>;

}  // namespace wrapgauge
