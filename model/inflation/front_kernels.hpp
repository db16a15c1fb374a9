#pragma once
// Dense work on the columns of one front, by loops of our own: fronts of sheets are small, and what a call of
// BLAS prepares costs more there than it wins. Column-major, lower triangles; rows of a column are worked on
// several at once, in vectors of as many bytes as the processor has. Processors with different vectors add up
// in different orders: results agree to the rounding of their precision.

#include <vector>

namespace wrapgauge {

template <class Real>
struct FrontKernels {
  int vector_bytes;

  // The first `wide` columns of a front of `tall` rows become those of its Cholesky factor, the rows below
  // the square included. False where the square is not positive definite.
  bool (*factor_columns)(int wide, int tall, Real* block);
  // C := -A A^T, lower triangle; A n x k with `lda` between its columns, C n x n.
  void (*set_to_minus_square)(int n, int k, const Real* a, int lda, Real* c);
  // By factored columns: own := L^-1 own and below := below - M own, L the square and M the rows below it.
  void (*forward)(int wide, int tall, const Real* block, Real* own, Real* below);
  // own := L^-T (own - M^T below).
  void (*backward)(int wide, int tall, const Real* block, Real* own, const Real* below);
};

// All that this processor can run, float or double; the last one has the widest vectors.
template <class Real>
const std::vector<FrontKernels<Real>>& front_kernels();

}  // namespace wrapgauge
