#include "model/inflation/factorisation.hpp"

#include <cholmod.h>

#include <algorithm>
#include <cstring>
#include <utility>

#include "model/inflation/cholmod_session.hpp"
#include "model/inflation/cholmod_view.hpp"
#include "model/inflation/multifrontal_cholesky.hpp"
#include "model/inflation/symbolic_analysis.hpp"

namespace wrapgauge {

struct Factorisation::Handles {
  enum class Factors { kNone, kSingle, kDouble, kIndefinite };

  FactorSettings settings;
  CholmodSession session;
  std::vector<int> order;  // of the unknowns
  cholmod_factor* simplicial = nullptr;
  std::shared_ptr<const FrontTree> tree;
  std::optional<MultifrontalCholesky<float>> in_single;
  std::optional<MultifrontalCholesky<double>> in_double;
  Factors factors = Factors::kNone;     // those at hand
  std::optional<BlockMatrix> factored;  // by `in_single`
  int corrections = 0;                  // that a solution by it has needed so far

  ~Handles() { cholmod_free_factor(&simplicial, &session.common()); }

  bool factor_in_single(const BlockMatrix& source) {
    in_double.reset();
    if (!in_single) in_single.emplace(tree);
    if (!in_single->factor(source.values())) return false;
    if (factored)
      factored->set_values(source.values());
    else
      factored = source;
    corrections = 0;
    factors = Factors::kSingle;
    return true;
  }

  bool factor_in_double(const BlockMatrix& source) {
    factors = Factors::kNone;
    if (!in_double) in_double.emplace(tree);
    if (!in_double->factor(source.values())) return false;
    factors = Factors::kDouble;
    return true;
  }
};

Result<Factorisation> make_factorisation(const BlockMatrix& pattern, const FactorSettings& settings) {
  Result<SymbolicAnalysis> analysis = analyse(pattern);
  if (!analysis) return analysis.problem();
  SymbolicAnalysis found = std::move(analysis).value();
  auto handles = std::make_unique<Factorisation::Handles>();
  handles->settings = settings;
  handles->order = std::move(found.order);
  handles->tree = std::make_shared<const FrontTree>(
      LowerColumns{pattern.column_starts(), pattern.row_indices()}, std::move(found.layout), settings);
  return Factorisation(std::move(handles));
}

Factorisation::Factorisation(std::unique_ptr<Handles> handles) : handles_(std::move(handles)) {}
Factorisation::~Factorisation() = default;
Factorisation::Factorisation(Factorisation&&) noexcept = default;
Factorisation& Factorisation::operator=(Factorisation&&) noexcept = default;

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

std::optional<int> Factorisation::factor_indefinite(const BlockMatrix& matrix) {
  ++count_;
  handles_->factors = Handles::Factors::kNone;
  CholmodSession& session = handles_->session;
  session.common().supernodal = CHOLMOD_SIMPLICIAL;
  session.common().final_ll = 0;
  if (handles_->simplicial == nullptr) {
    handles_->simplicial = symbolic_factor(matrix, handles_->order, session);
    if (handles_->simplicial == nullptr) {
      failure_ = session.failure(Phrase::worded("analysing"), matrix.rows());
      return std::nullopt;
    }
  }
  cholmod_sparse view = view_of(matrix.column_starts(), matrix.row_indices(), matrix.values().data());
  const int done = cholmod_factorize(&view, handles_->simplicial, &session.common());
  if (!done || session.failed()) {
    failure_ = session.failure(Phrase::worded("factoring"), matrix.rows());
    return std::nullopt;
  }
  const cholmod_factor& factor = *handles_->simplicial;
  if (session.common().status != CHOLMOD_OK || factor.minor != factor.n || factor.is_ll) return std::nullopt;
  handles_->factors = Handles::Factors::kIndefinite;
  const auto* starts = static_cast<const int*>(factor.p);
  const auto* values = static_cast<const double*>(factor.x);
  int negative = 0;
  for (std::size_t column = 0; column < factor.n; ++column) negative += values[starts[column]] < 0.0;
  return negative;
}

std::optional<Eigen::MatrixXd> Factorisation::solve(const Eigen::MatrixXd& right_hand_sides) {
  switch (handles_->factors) {
    case Handles::Factors::kNone:
      return std::nullopt;
    case Handles::Factors::kSingle:
      return solve_in_single(right_hand_sides);
    case Handles::Factors::kIndefinite:
      return solve_indefinite(right_hand_sides);
    case Handles::Factors::kDouble:
      return handles_->in_double->solve(right_hand_sides);
  }
  return std::nullopt;
}

// Corrected by what is left over when the solution is put into the equations: at least as often as an
// earlier solution with these factors, and until little enough is left. Where corrections do not get there it
// is solved in double.
std::optional<Eigen::MatrixXd> Factorisation::solve_in_single(const Eigen::MatrixXd& right_hand_sides) {
  Handles& at = *handles_;
  const Eigen::ArrayXd most = at.settings.left_over * right_hand_sides.colwise().norm().array();
  Eigen::MatrixXd solution = at.in_single->solve(right_hand_sides);
  for (int corrections = 0;; ++corrections) {
    const Eigen::MatrixXd left = right_hand_sides - at.factored->times(solution);
    const bool enough = (left.colwise().norm().transpose().array() <= most).all();
    if (enough && corrections >= at.corrections) {
      at.corrections = std::max(at.corrections, corrections);
      return solution;
    }
    if (corrections == at.settings.most_corrections) break;
    solution += at.in_single->solve(left);
  }
  if (!at.factor_in_double(*at.factored)) return std::nullopt;
  return at.in_double->solve(right_hand_sides);
}

std::optional<Eigen::MatrixXd> Factorisation::solve_indefinite(const Eigen::MatrixXd& right_hand_sides) {
  cholmod_dense view{};
  view.nrow = view.d = static_cast<std::size_t>(right_hand_sides.rows());
  view.ncol = static_cast<std::size_t>(right_hand_sides.cols());
  view.nzmax = view.nrow * view.ncol;
  view.x = const_cast<double*>(right_hand_sides.data());
  view.xtype = CHOLMOD_REAL;
  view.dtype = CHOLMOD_DOUBLE;
  CholmodSession& session = handles_->session;
  cholmod_dense* solution = cholmod_solve(CHOLMOD_A, handles_->simplicial, &view, &session.common());
  if (solution == nullptr || session.failed()) {
    cholmod_free_dense(&solution, &session.common());
    failure_ = session.failure(Phrase::worded("solving"), static_cast<int>(right_hand_sides.rows()));
    return std::nullopt;
  }
  Eigen::MatrixXd result(right_hand_sides.rows(), right_hand_sides.cols());
  std::memcpy(result.data(), solution->x, sizeof(double) * static_cast<std::size_t>(result.size()));
  cholmod_free_dense(&solution, &session.common());
  return result;
}

}  // namespace wrapgauge
