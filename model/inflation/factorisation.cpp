#include "model/inflation/factorisation.hpp"

#include <cholmod.h>
#include <omp.h>

#include <cassert>
#include <cstring>
#include <mutex>
#include <optional>

#include "model/inflation/cholmod_view.hpp"
#include "model/inflation/multifrontal_cholesky.hpp"

namespace wrapgauge {
namespace {

// Of a solution in single precision: what it may leave over of its side, and how often it is corrected.
constexpr double kLeftOver = 1e-3;
constexpr int kMostCorrections = 4;

std::vector<int> ints(const void* data, std::size_t count) {
  const auto* first = static_cast<const int*>(data);
  return {first, first + count};
}

SupernodeLayout layout_of(const cholmod_factor& factor) {
  return {ints(factor.super, factor.nsuper + 1), ints(factor.pi, factor.nsuper + 1),
          ints(factor.s, factor.ssize), ints(factor.px, factor.nsuper + 1), ints(factor.Perm, factor.n)};
}

// Nested dissection of the nodes, a third of the unknowns. METIS seeds and draws from the C library's
// generator, which all threads share: two at a time would order by chance and change the last digits of what
// is solved.
std::vector<int> order_of_unknowns(const BlockMatrix& pattern, cholmod_common& common) {
  static std::mutex one_at_a_time;
  const std::lock_guard lock(one_at_a_time);
  cholmod_sparse nodes = view_of(pattern.block_starts(), pattern.block_rows(), nullptr);
  std::vector<int> order(nodes.nrow);
  [[maybe_unused]] const int done = cholmod_metis(&nodes, nullptr, 0, 1, order.data(), &common);
  assert(done);
  std::vector<int> unknowns;
  for (int node : order)
    for (int axis = 0; axis < 3; ++axis) unknowns.push_back(3 * node + axis);
  return unknowns;
}

cholmod_factor* analysed(const BlockMatrix& pattern, std::vector<int>& order, cholmod_common& common) {
  cholmod_sparse matrix = view_of(pattern.column_starts(), pattern.row_indices(), pattern.values().data());
  return cholmod_analyze_p(&matrix, order.data(), nullptr, 0, &common);
}

}  // namespace

struct Factorisation::Handles {
  enum class Factors { kNone, kSingle, kDouble, kIndefinite };

  cholmod_common common{};
  std::vector<int> order;  // of the unknowns
  cholmod_factor* simplicial = nullptr;
  std::shared_ptr<const FrontTree> tree;
  std::optional<MultifrontalCholesky<float>> in_single;
  std::optional<MultifrontalCholesky<double>> in_double;
  Factors factors = Factors::kNone;     // those at hand
  std::optional<BlockMatrix> factored;  // by `in_single`
  std::optional<int> corrections;       // that solutions by it need; not known before the first

  bool factor_in_single(const BlockMatrix& source) {
    in_double.reset();
    if (!in_single) in_single.emplace(tree);
    if (!in_single->factor(source.values())) return false;
    if (factored)
      factored->set_values(source.values());
    else
      factored = source;
    corrections.reset();
    factors = Factors::kSingle;
    return true;
  }

  bool factor_in_double(const BlockMatrix& source) {
    if (!in_double) in_double.emplace(tree);
    if (!in_double->factor(source.values())) return false;
    factors = Factors::kDouble;
    return true;
  }
};

Factorisation::Factorisation(const BlockMatrix& pattern) : handles_(std::make_unique<Handles>()) {
  // CHOLMOD asks for four threads whatever omp_set_num_threads says; their waits cost more than they win
  // here.
  omp_set_max_active_levels(0);
  cholmod_common& common = handles_->common;
  cholmod_start(&common);
  common.print = 0;
  common.nmethods = 1;
  common.method[0].ordering = CHOLMOD_GIVEN;
  common.postorder = 1;
  common.supernodal = CHOLMOD_SUPERNODAL;
  common.quick_return_if_not_posdef = 1;
  handles_->order = order_of_unknowns(pattern, common);
  cholmod_factor* supernodal = analysed(pattern, handles_->order, common);
  assert(supernodal != nullptr);
  handles_->tree = std::make_shared<const FrontTree>(
      LowerColumns{pattern.column_starts(), pattern.row_indices()}, layout_of(*supernodal));
  cholmod_free_factor(&supernodal, &common);
}

Factorisation::~Factorisation() {
  cholmod_free_factor(&handles_->simplicial, &handles_->common);
  cholmod_finish(&handles_->common);
}

bool Factorisation::factor_definite(const BlockMatrix& matrix, Digits digits) {
  ++count_;
  handles_->factors = Handles::Factors::kNone;
  if (digits == Digits::kSingle) return handles_->factor_in_single(matrix);
  handles_->in_single.reset();
  return handles_->factor_in_double(matrix);
}

bool Factorisation::is_definite(const BlockMatrix& matrix) {
  ++count_;
  handles_->factors = Handles::Factors::kNone;
  handles_->in_single.reset();
  handles_->in_double.reset();
  return MultifrontalCholesky<double>(handles_->tree).is_definite(matrix.values());
}

int Factorisation::factor_indefinite(const BlockMatrix& matrix) {
  cholmod_common& common = handles_->common;
  ++count_;
  if (handles_->simplicial == nullptr) {
    common.supernodal = CHOLMOD_SIMPLICIAL;
    common.final_ll = 0;
    handles_->simplicial = analysed(matrix, handles_->order, common);
  }
  common.supernodal = CHOLMOD_SIMPLICIAL;
  common.final_ll = 0;
  cholmod_sparse view = view_of(matrix.column_starts(), matrix.row_indices(), matrix.values().data());
  const int done = cholmod_factorize(&view, handles_->simplicial, &common);
  common.supernodal = CHOLMOD_SUPERNODAL;
  const cholmod_factor& factor = *handles_->simplicial;
  if (!done || common.status != CHOLMOD_OK || factor.minor != factor.n || factor.is_ll) {
    handles_->factors = Handles::Factors::kNone;
    return -1;
  }
  handles_->factors = Handles::Factors::kIndefinite;
  const auto* starts = static_cast<const int*>(factor.p);
  const auto* values = static_cast<const double*>(factor.x);
  int negative = 0;
  for (std::size_t column = 0; column < factor.n; ++column) negative += values[starts[column]] < 0.0;
  return negative;
}

Eigen::MatrixXd Factorisation::solve(const Eigen::MatrixXd& right_hand_sides) {
  assert(handles_->factors != Handles::Factors::kNone);
  switch (handles_->factors) {
    case Handles::Factors::kSingle:
      return solve_in_single(right_hand_sides);
    case Handles::Factors::kIndefinite:
      return solve_indefinite(right_hand_sides);
    default:
      return handles_->in_double->solve(right_hand_sides);
  }
}

// Corrected by what is left over when the solution is put into the equations. How often, the first solution
// with these factors tells; where corrections do not help it is in double.
Eigen::MatrixXd Factorisation::solve_in_single(const Eigen::MatrixXd& right_hand_sides) {
  Handles& at = *handles_;
  Eigen::MatrixXd solution = at.in_single->solve(right_hand_sides);
  for (int corrections = 0; corrections != at.corrections; ++corrections) {
    const Eigen::MatrixXd left = right_hand_sides - at.factored->times(solution);
    if (!at.corrections) {
      const auto most = kLeftOver * right_hand_sides.colwise().norm().array();
      const bool enough = (left.colwise().norm().array() <= most).all();
      if (!enough && corrections == kMostCorrections && at.factor_in_double(*at.factored))
        return at.in_double->solve(right_hand_sides);
      if (enough || corrections == kMostCorrections) {
        at.corrections = corrections;
        break;
      }
    }
    solution += at.in_single->solve(left);
  }
  return solution;
}

Eigen::MatrixXd Factorisation::solve_indefinite(const Eigen::MatrixXd& right_hand_sides) const {
  cholmod_dense view{};
  view.nrow = view.d = static_cast<std::size_t>(right_hand_sides.rows());
  view.ncol = static_cast<std::size_t>(right_hand_sides.cols());
  view.nzmax = view.nrow * view.ncol;
  view.x = const_cast<double*>(right_hand_sides.data());
  view.xtype = CHOLMOD_REAL;
  view.dtype = CHOLMOD_DOUBLE;
  cholmod_dense* solution = cholmod_solve(CHOLMOD_A, handles_->simplicial, &view, &handles_->common);
  assert(solution != nullptr);
  Eigen::MatrixXd result(right_hand_sides.rows(), right_hand_sides.cols());
  std::memcpy(result.data(), solution->x, sizeof(double) * static_cast<std::size_t>(result.size()));
  cholmod_free_dense(&solution, &handles_->common);
  return result;
}

}  // namespace wrapgauge
