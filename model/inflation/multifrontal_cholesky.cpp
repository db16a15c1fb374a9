#include "model/inflation/multifrontal_cholesky.hpp"

#include <algorithm>
#include <cassert>

#include "model/core/both_at_once.hpp"

namespace wrapgauge {
namespace {

template <class Real>
void add_rows(int count, const Real* __restrict from, Real* __restrict to) {
  for (int i = 0; i < count; ++i) to[i] += from[i];
}

}  // namespace

template <class Real>
MultifrontalCholesky<Real>::MultifrontalCholesky(std::shared_ptr<const FrontTree> tree)
    : tree_(std::move(tree)) {
  for (const Part& part : tree_->parts())
    arenas_.push_back(std::make_unique_for_overwrite<Real[]>(part.arena_size));
}

// Adds the part of what a child left over that falls into the columns of its parent, or all beyond them.
template <class Real>
void MultifrontalCholesky<Real>::take_over(int child, Real* block, Real* rest_of_parent,
                                           bool into_columns) const {
  const FrontTree::Front& front = tree_->front(child);
  const int n = tree_->rest(child), wide = tree_->columns(front.parent), tall = tree_->height(front.parent);
  const Real* source = left_over(child);
  assert(front.left_over + static_cast<std::size_t>(n) * static_cast<std::size_t>(n) <=
         tree_->parts()[tree_->part_of(child)].arena_size);
  const auto beyond = std::lower_bound(front.in_parent.begin(), front.in_parent.end(), wide);
  const int first_beyond = static_cast<int>(beyond - front.in_parent.begin());
  const int from = into_columns ? 0 : first_beyond, to = into_columns ? first_beyond : n;
  auto run = front.runs.begin();
  for (int j = from; j < to; ++j) {
    const Real* column = source + static_cast<std::size_t>(j) * static_cast<std::size_t>(n);
    const int at = front.in_parent[j];
    assert(into_columns ? at < wide : wide <= at && at < tall);
    Real* target =
        into_columns ? block + static_cast<std::size_t>(at) * static_cast<std::size_t>(tall)
                     : rest_of_parent +
                           static_cast<std::size_t>(at - wide) * static_cast<std::size_t>(tall - wide) - wide;
    while (run->from + run->length <= j) ++run;
    add_rows(run->length - (j - run->from), column + j, target + at);
    for (auto below = run + 1; below != front.runs.end(); ++below)
      add_rows(below->length, column + below->from, target + below->to);
  }
}

template <class Real>
bool MultifrontalCholesky<Real>::factor_front(int s, const std::vector<double>& values, Real* block) {
  const FrontTree::Front& front = tree_->front(s);
  const std::vector<int>& value_start = tree_->layout().value_start;
  const int wide = tree_->columns(s), tall = tree_->height(s), n = tall - wide;
  assert(value_start[s + 1] - value_start[s] == wide * tall);
  std::fill_n(block, value_start[s + 1] - value_start[s], Real(0));
  for (int e = front.first_entry; e < front.last_entry; ++e)
    block[tree_->entries()[e].target - value_start[s]] +=
        static_cast<Real>(values[tree_->entries()[e].source]);
  for (int child : front.children) take_over(child, block, nullptr, true);
  if (!kernels_.factor_columns(wide, tall, block)) return false;
  if (n == 0) return true;
  Real* rest_block = left_over(s);
  kernels_.set_to_minus_square(n, wide, block + wide, tall, rest_block);
  for (int child : front.children) take_over(child, nullptr, rest_block, false);
  return true;
}

template <class Real>
void MultifrontalCholesky<Real>::factor_part(const Part& part, const std::vector<double>& values,
                                             const Columns& columns, std::atomic<bool>& definite) {
  for (int s : part.order)
    if (!definite || !factor_front(s, values, columns(s))) {
      definite = false;
      return;
    }
}

template <class Real>
bool MultifrontalCholesky<Real>::factor_parts(const std::vector<double>& values,
                                              const std::array<Columns, 3>& columns) {
  const std::vector<Part>& parts = tree_->parts();
  std::atomic<bool> definite = true;
  both_at_once([&] { factor_part(parts[0], values, columns[0], definite); },
               [&] { factor_part(parts[1], values, columns[1], definite); });
  factor_part(parts[FrontTree::kTop], values, columns[FrontTree::kTop], definite);
  return definite;
}

template <class Real>
bool MultifrontalCholesky<Real>::factor(const std::vector<double>& values) {
  const std::vector<int>& value_start = tree_->layout().value_start;
  assert(values.size() >= tree_->entries().size());
  factor_.resize(static_cast<std::size_t>(value_start.back()));
  const Columns own = [&](int s) { return factor_.data() + value_start[s]; };
  return factor_parts(values, {own, own, own});
}

template <class Real>
bool MultifrontalCholesky<Real>::is_definite(const std::vector<double>& values) {
  const std::vector<int>& value_start = tree_->layout().value_start;
  std::array<std::unique_ptr<Real[]>, 3> room;
  std::array<Columns, 3> columns;
  for (std::size_t p = 0; p < room.size(); ++p) {
    int most = 0;
    for (int s : tree_->parts()[p].order) most = std::max(most, value_start[s + 1] - value_start[s]);
    room[p] = std::make_unique_for_overwrite<Real[]>(static_cast<std::size_t>(most));
    columns[p] = [&own = room[p]](int) { return own.get(); };
  }
  return factor_parts(values, columns);
}

template <class Real>
void MultifrontalCholesky<Real>::forward(const Part& part, Matrix& x) const {
  const SupernodeLayout& layout = tree_->layout();
  Vector below(tree_->most_rest());
  for (Eigen::Index side = 0; side < x.cols(); ++side)
    for (int s : part.order) {
      const int wide = tree_->columns(s), tall = tree_->height(s);
      const int* rows = layout.rows.data() + layout.row_start[s] + wide;
      below.head(tall - wide).setZero();
      kernels_.forward(wide, tall, block_of(s), &x(layout.first_column[s], side), below.data());
      for (int i = 0; i < tall - wide; ++i) x(rows[i], side) += below(i);
    }
}

template <class Real>
void MultifrontalCholesky<Real>::backward(const Part& part, Matrix& x) const {
  const SupernodeLayout& layout = tree_->layout();
  Vector below(tree_->most_rest());
  for (Eigen::Index side = 0; side < x.cols(); ++side)
    for (auto s = part.order.rbegin(); s != part.order.rend(); ++s) {
      const int wide = tree_->columns(*s), tall = tree_->height(*s);
      const int* rows = layout.rows.data() + layout.row_start[*s] + wide;
      for (int i = 0; i < tall - wide; ++i) below(i) = x(rows[i], side);
      kernels_.backward(wide, tall, block_of(*s), &x(layout.first_column[*s], side), below.data());
    }
}

template <class Real>
Eigen::MatrixXd MultifrontalCholesky<Real>::solve(const Eigen::MatrixXd& sides) const {
  const SupernodeLayout& layout = tree_->layout();
  const std::vector<Part>& parts = tree_->parts();
  const Part& top = parts[FrontTree::kTop];
  assert(!factor_.empty() && sides.rows() == static_cast<Eigen::Index>(layout.permutation.size()));
  const Eigen::Map<const Eigen::VectorXi> column_of(layout.permutation.data(), sides.rows());
  Matrix x = sides(column_of, Eigen::all).template cast<Real>();
  // Both halves take from the rows of the top: the second one on the side, added when both are done.
  Matrix aside = Matrix::Zero(x.rows(), x.cols());
  const auto columns_of = [&](int s) { return Eigen::seqN(layout.first_column[s], tree_->columns(s)); };
  for (int s : parts[1].order) aside(columns_of(s), Eigen::all) = x(columns_of(s), Eigen::all);
  both_at_once([&] { forward(parts[0], x); }, [&] { forward(parts[1], aside); });
  for (int s : parts[1].order) x(columns_of(s), Eigen::all) = aside(columns_of(s), Eigen::all);
  for (int s : top.order) x(columns_of(s), Eigen::all) += aside(columns_of(s), Eigen::all);
  forward(top, x);
  backward(top, x);
  both_at_once([&] { backward(parts[0], x); }, [&] { backward(parts[1], x); });
  Eigen::MatrixXd solution(x.rows(), x.cols());
  solution(column_of, Eigen::all) = x.template cast<double>();
  return solution;
}

template class MultifrontalCholesky<float>;
template class MultifrontalCholesky<double>;

}  // namespace wrapgauge
