#include "model/inflation/symbolic_analysis.hpp"

#include <omp.h>

#include <mutex>
#include <utility>

#include "model/inflation/cholmod_view.hpp"

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

bool is_permutation(const std::vector<int>& order) {
  std::vector<bool> seen(order.size(), false);
  for (int place : order) {
    if (place < 0 || place >= static_cast<int>(order.size()) || seen[place]) return false;
    seen[place] = true;
  }
  return true;
}

// Nested dissection of the nodes, a third of the unknowns. METIS seeds and draws from the C library's
// generator, which all threads share: two at a time would order by chance and change the last digits of what
// is solved.
Result<std::vector<int>> order_of_unknowns(const BlockMatrix& pattern, CholmodSession& session) {
  static std::mutex one_at_a_time;
  const std::lock_guard lock(one_at_a_time);
  cholmod_sparse nodes = view_of(pattern.block_starts(), pattern.block_rows(), nullptr);
  std::vector<int> order(nodes.nrow, -1);
  const int done = cholmod_metis(&nodes, nullptr, 0, 1, order.data(), &session.common());
  // CHOLMOD does not hand on what METIS returns: an order that is none shows that METIS failed.
  if (!done || session.failed() || !is_permutation(order))
    return session.failure(Phrase::worded("ordering"), pattern.rows());
  std::vector<int> unknowns;
  for (int node : order)
    for (int axis = 0; axis < 3; ++axis) unknowns.push_back(3 * node + axis);
  return unknowns;
}

}  // namespace

cholmod_factor* symbolic_factor(const BlockMatrix& pattern, const std::vector<int>& order,
                                CholmodSession& session) {
  cholmod_sparse matrix = view_of(pattern.column_starts(), pattern.row_indices(), pattern.values().data());
  cholmod_factor* factor =
      cholmod_analyze_p(&matrix, const_cast<int*>(order.data()), nullptr, 0, &session.common());
  if (session.failed()) cholmod_free_factor(&factor, &session.common());
  return factor;
}

Result<SymbolicAnalysis> analyse(const BlockMatrix& pattern) {
  // CHOLMOD asks for four threads whatever omp_set_num_threads says; their waits cost more than they win
  // here.
  omp_set_max_active_levels(0);
  CholmodSession session;
  Result<std::vector<int>> order = order_of_unknowns(pattern, session);
  if (!order) return order.problem();
  cholmod_factor* supernodal = symbolic_factor(pattern, *order, session);
  if (supernodal == nullptr) return session.failure(Phrase::worded("analysing"), pattern.rows());
  SymbolicAnalysis analysis{std::move(order).value(), layout_of(*supernodal)};
  cholmod_free_factor(&supernodal, &session.common());
  return analysis;
}

}  // namespace wrapgauge
