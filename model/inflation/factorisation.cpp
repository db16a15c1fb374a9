#include "model/inflation/factorisation.hpp"

#include <cholmod.h>
#include <omp.h>

#include <cassert>
#include <cstring>
#include <mutex>
#include <optional>

#include "model/inflation/multifrontal_cholesky.hpp"

extern "C" void openblas_set_num_threads(int);

namespace wrapgauge {
namespace {

std::vector<int> ints(const void* data, std::size_t count) {
  const auto* first = static_cast<const int*>(data);
  return {first, first + count};
}

SupernodeLayout layout_of(const cholmod_factor& factor) {
  return {ints(factor.super, factor.nsuper + 1), ints(factor.pi, factor.nsuper + 1),
          ints(factor.s, factor.ssize), ints(factor.px, factor.nsuper + 1), ints(factor.Perm, factor.n)};
}

// METIS seeds and draws from the C library's generator, which all threads share: two analyses at a time would
// order the unknowns by chance and change the last digits of what is solved.
cholmod_factor* analysed(cholmod_sparse& matrix, cholmod_common& common) {
  static std::mutex one_at_a_time;
  const std::lock_guard lock(one_at_a_time);
  return cholmod_analyze(&matrix, &common);
}

}  // namespace

struct Factorisation::Handles {
  cholmod_common common{};
  cholmod_sparse matrix{};  // a view of the BlockMatrix arrays
  cholmod_factor* supernodal = nullptr;
  cholmod_factor* simplicial = nullptr;
  cholmod_factor* current = nullptr;
  std::optional<MultifrontalCholesky> multifrontal;  // fills in the values of `supernodal`

  void view(const BlockMatrix& source) {
    const auto n = static_cast<std::size_t>(source.rows());
    matrix.nrow = matrix.ncol = n;
    matrix.nzmax = source.values().size();
    matrix.p = const_cast<int*>(source.column_starts().data());
    matrix.i = const_cast<int*>(source.row_indices().data());
    matrix.x = const_cast<double*>(source.values().data());
    matrix.stype = -1;  // lower triangle; entries above the diagonal inside diagonal blocks are ignored
    matrix.itype = CHOLMOD_INT;
    matrix.xtype = CHOLMOD_REAL;
    matrix.dtype = CHOLMOD_DOUBLE;
    matrix.sorted = 1;
    matrix.packed = 1;
  }
};

Factorisation::Factorisation(const BlockMatrix& pattern) : handles_(std::make_unique<Handles>()) {
  // CHOLMOD asks for four threads whatever omp_set_num_threads says; their waits cost more than they win
  // here.
  omp_set_max_active_levels(0);
  openblas_set_num_threads(1);
  cholmod_common& common = handles_->common;
  cholmod_start(&common);
  common.print = 0;
  common.nmethods = 1;
  common.method[0].ordering = CHOLMOD_METIS;
  common.postorder = 1;
  common.supernodal = CHOLMOD_SUPERNODAL;
  common.quick_return_if_not_posdef = 1;
  handles_->view(pattern);
  handles_->supernodal = analysed(handles_->matrix, common);
  assert(handles_->supernodal != nullptr);
  cholmod_change_factor(CHOLMOD_REAL, 1, 1, 1, 1, handles_->supernodal, &common);
  handles_->multifrontal.emplace(LowerColumns{pattern.column_starts(), pattern.row_indices()},
                                 layout_of(*handles_->supernodal));
}

Factorisation::~Factorisation() {
  cholmod_free_factor(&handles_->supernodal, &handles_->common);
  cholmod_free_factor(&handles_->simplicial, &handles_->common);
  cholmod_finish(&handles_->common);
}

bool Factorisation::factor_definite(const BlockMatrix& matrix) {
  ++count_;
  const bool definite =
      handles_->multifrontal->factor(matrix.values(), static_cast<double*>(handles_->supernodal->x));
  handles_->current = definite ? handles_->supernodal : nullptr;
  return definite;
}

int Factorisation::factor_indefinite(const BlockMatrix& matrix) {
  cholmod_common& common = handles_->common;
  handles_->view(matrix);
  ++count_;
  if (handles_->simplicial == nullptr) {
    common.supernodal = CHOLMOD_SIMPLICIAL;
    common.final_ll = 0;
    handles_->simplicial = analysed(handles_->matrix, common);
  }
  common.supernodal = CHOLMOD_SIMPLICIAL;
  common.final_ll = 0;
  const int done = cholmod_factorize(&handles_->matrix, handles_->simplicial, &common);
  common.supernodal = CHOLMOD_SUPERNODAL;
  const cholmod_factor& factor = *handles_->simplicial;
  if (!done || common.status != CHOLMOD_OK || factor.minor != factor.n || factor.is_ll) {
    handles_->current = nullptr;
    return -1;
  }
  handles_->current = handles_->simplicial;
  const auto* starts = static_cast<const int*>(factor.p);
  const auto* values = static_cast<const double*>(factor.x);
  int negative = 0;
  for (std::size_t column = 0; column < factor.n; ++column) negative += values[starts[column]] < 0.0;
  return negative;
}

Eigen::MatrixXd Factorisation::solve(const Eigen::MatrixXd& right_hand_sides) const {
  assert(handles_->current != nullptr);
  if (handles_->current == handles_->supernodal)
    return handles_->multifrontal->solve(static_cast<double*>(handles_->supernodal->x), right_hand_sides);
  cholmod_dense view{};
  view.nrow = view.d = static_cast<std::size_t>(right_hand_sides.rows());
  view.ncol = static_cast<std::size_t>(right_hand_sides.cols());
  view.nzmax = view.nrow * view.ncol;
  view.x = const_cast<double*>(right_hand_sides.data());
  view.xtype = CHOLMOD_REAL;
  view.dtype = CHOLMOD_DOUBLE;
  cholmod_dense* solution = cholmod_solve(CHOLMOD_A, handles_->current, &view, &handles_->common);
  assert(solution != nullptr);
  Eigen::MatrixXd result(right_hand_sides.rows(), right_hand_sides.cols());
  std::memcpy(result.data(), solution->x, sizeof(double) * static_cast<std::size_t>(result.size()));
  cholmod_free_dense(&solution, &handles_->common);
  return result;
}

}  // namespace wrapgauge
