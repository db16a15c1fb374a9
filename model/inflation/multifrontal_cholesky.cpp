#include "model/inflation/multifrontal_cholesky.hpp"

#include <algorithm>

#include "model/core/both_at_once.hpp"

extern "C" {
void dpotrf_(const char* triangle, const int* n, double* a, const int* lda, int* info);
void dtrsm_(const char* side, const char* triangle, const char* transposed, const char* diagonal,
            const int* m, const int* n, const double* alpha, const double* a, const int* lda, double* b,
            const int* ldb);
void dsyrk_(const char* triangle, const char* transposed, const int* n, const int* k, const double* alpha,
            const double* a, const int* lda, const double* beta, double* c, const int* ldc);
void dgemm_(const char* transposed_a, const char* transposed_b, const int* m, const int* n, const int* k,
            const double* alpha, const double* a, const int* lda, const double* b, const int* ldb,
            const double* beta, double* c, const int* ldc);
void dgemv_(const char* transposed, const int* m, const int* n, const double* alpha, const double* a,
            const int* lda, const double* x, const int* step_x, const double* beta, double* y,
            const int* step_y);
void dtrsv_(const char* triangle, const char* transposed, const char* diagonal, const int* n, const double* a,
            const int* lda, double* x, const int* step);
}

namespace wrapgauge {
namespace {

// Subtrees are split until the larger half has at most this share of them all, or so many times.
constexpr double kEvenShare = 0.53;
constexpr int kMostSplits = 24;
constexpr int kTop = 2;  // index of the part that waits for the two others

std::vector<int> supernode_of_column(const SupernodeLayout& layout) {
  std::vector<int> supernode_of(static_cast<std::size_t>(layout.first_column.back()));
  for (int s = 0; s < layout.count(); ++s)
    std::fill(supernode_of.begin() + layout.first_column[s],
              supernode_of.begin() + layout.first_column[s + 1], s);
  return supernode_of;
}

// x := L^-1 x or L^-T x, L the lower triangle of the n x n square at `l`; x with `ldx` between its columns.
void solve_triangle(const char* transposed, int n, const double* l, int ldl, double* x, int ldx, int count) {
  const int unit_step = 1;
  const double one = 1.0;
  if (count == 1)
    dtrsv_("L", transposed, "N", &n, l, &ldl, x, &unit_step);
  else
    dtrsm_("L", "L", transposed, "N", &n, &count, &one, l, &ldl, x, &ldx);
}

// y := y - M x or y - M^T x, M rows x columns.
void subtract_product(const char* transposed, int rows, int columns, const double* m, int ldm,
                      const double* x, int ldx, double* y, int ldy, int count) {
  const int unit_step = 1;
  const double one = 1.0, minus_one = -1.0;
  if (count == 1) {
    dgemv_(transposed, &rows, &columns, &minus_one, m, &ldm, x, &unit_step, &one, y, &unit_step);
    return;
  }
  const bool plain = *transposed == 'N';
  const int tall = plain ? rows : columns, inner = plain ? columns : rows;
  dgemm_(transposed, "N", &tall, &count, &inner, &minus_one, m, &ldm, x, &ldx, &one, y, &ldy);
}

}  // namespace

MultifrontalCholesky::MultifrontalCholesky(const LowerColumns& pattern, SupernodeLayout layout)
    : layout_(std::move(layout)), fronts_(static_cast<std::size_t>(layout_.count())) {
  link_tree();
  map_entries(pattern);
  split_tree();
  for (Part& part : parts_) place(part);
}

void MultifrontalCholesky::link_tree() {
  const std::vector<int> supernode_of = supernode_of_column(layout_);
  for (int s = 0; s < layout_.count(); ++s) {
    Front& front = fronts_[s];
    const int* rows = layout_.rows.data() + layout_.row_start[s];
    for (int k = 0; k < columns(s); ++k) {
      const double tall = height(s) - k;
      front.work += tall * tall;
    }
    if (rest(s) == 0) continue;
    front.parent = supernode_of[rows[columns(s)]];
    Front& parent = fronts_[front.parent];
    parent.children.push_back(s);
    parent.work += front.work;
    const int* seek = layout_.rows.data() + layout_.row_start[front.parent];
    const int* first = seek;
    for (int k = columns(s); k < height(s); ++k) {
      while (*seek != rows[k]) ++seek;
      const int at = static_cast<int>(seek - first);
      if (front.runs.empty() || front.in_parent.back() + 1 != at)
        front.runs.push_back({k - columns(s), at, 0});
      ++front.runs.back().length;
      front.in_parent.push_back(at);
    }
  }
}

void MultifrontalCholesky::map_entries(const LowerColumns& pattern) {
  const std::size_t n = layout_.permutation.size();
  const std::vector<int> supernode_of = supernode_of_column(layout_);
  std::vector<int> place_of(n);
  for (std::size_t k = 0; k < n; ++k) place_of[layout_.permutation[k]] = static_cast<int>(k);
  for (std::size_t column = 0; column < n; ++column)
    for (int k = pattern.starts[column]; k < pattern.starts[column + 1]; ++k) {
      if (pattern.rows[k] < static_cast<int>(column)) continue;  // above the diagonal
      const auto [low, high] = std::minmax(place_of[column], place_of[pattern.rows[k]]);
      const int s = supernode_of[low];
      const auto first = layout_.rows.begin() + layout_.row_start[s];
      const auto last = layout_.rows.begin() + layout_.row_start[s + 1];
      const int row = static_cast<int>(std::lower_bound(first, last, high) - first);
      entries_.push_back({k, layout_.value_start[s] + (low - layout_.first_column[s]) * height(s) + row});
    }
  std::sort(entries_.begin(), entries_.end(),
            [](const Entry& a, const Entry& b) { return a.target < b.target; });
  int at = 0;
  for (int s = 0; s < layout_.count(); ++s) {
    fronts_[s].first_entry = at;
    while (at < static_cast<int>(entries_.size()) && entries_[at].target < layout_.value_start[s + 1]) ++at;
    fronts_[s].last_entry = at;
  }
}

// The largest subtree gives way to its children until two even halves can be made of the subtrees.
void MultifrontalCholesky::split_tree() {
  std::vector<int> subtrees;
  for (int s = 0; s < layout_.count(); ++s)
    if (fronts_[s].parent < 0) subtrees.push_back(s);
  part_of_.assign(fronts_.size(), kTop);
  std::vector<int> half;
  for (int split = 0;; ++split) {
    std::sort(subtrees.begin(), subtrees.end(), [&](int a, int b) {
      return fronts_[a].work != fronts_[b].work ? fronts_[a].work > fronts_[b].work : a < b;
    });
    double load[2] = {0.0, 0.0};
    half.clear();
    for (int s : subtrees) {
      half.push_back(load[0] <= load[1] ? 0 : 1);
      load[half.back()] += fronts_[s].work;
    }
    if (std::max(load[0], load[1]) <= kEvenShare * (load[0] + load[1]) || split == kMostSplits) break;
    const int largest = subtrees.front();
    if (fronts_[largest].children.empty()) break;
    subtrees.erase(subtrees.begin());
    subtrees.insert(subtrees.end(), fronts_[largest].children.begin(), fronts_[largest].children.end());
  }
  for (std::size_t k = 0; k < subtrees.size(); ++k) part_of_[subtrees[k]] = half[k];
  parts_.resize(3);
  for (int s = layout_.count() - 1; s >= 0; --s) {  // parents before children
    const int parent = fronts_[s].parent;
    if (parent >= 0 && part_of_[parent] != kTop) part_of_[s] = part_of_[parent];
  }
  for (int s = 0; s < layout_.count(); ++s) parts_[part_of_[s]].order.push_back(s);
}

// Two stacks share a part's arena: fronts at even depths leave their rest on one, those at odd depths on the
// other, so that a front's children are always on top when it takes them over. A subtree's own rest is kept.
void MultifrontalCholesky::place(Part& part) {
  std::vector<int> depth(fronts_.size(), 0);
  for (auto s = part.order.rbegin(); s != part.order.rend(); ++s)
    if (fronts_[*s].parent >= 0) depth[*s] = depth[fronts_[*s].parent] + 1;
  std::size_t top[2] = {0, 0}, most[2] = {0, 0};
  for (int s : part.order) {
    const int side = depth[s] % 2;
    fronts_[s].left_over = top[side];
    top[side] += static_cast<std::size_t>(rest(s)) * static_cast<std::size_t>(rest(s));
    most[side] = std::max(most[side], top[side]);
    for (int child : fronts_[s].children)
      if (part_of_[child] == part_of_[s])
        top[1 - side] -= static_cast<std::size_t>(rest(child)) * static_cast<std::size_t>(rest(child));
  }
  for (int s : part.order)
    if (depth[s] % 2 == 1) fronts_[s].left_over += most[0];
  part.arena.assign(most[0] + most[1], 0.0);
}

// Adds the part of what a child left over that falls into the columns of its parent, or all beyond them.
void MultifrontalCholesky::take_over(int child, double* block, double* rest_of_parent,
                                     bool into_columns) const {
  const Front& front = fronts_[child];
  const int n = rest(child), parent = front.parent, wide = columns(parent), tall = height(parent);
  const double* source = left_over(child);
  const auto beyond = std::lower_bound(front.in_parent.begin(), front.in_parent.end(), wide);
  const int first_beyond = static_cast<int>(beyond - front.in_parent.begin());
  const int from = into_columns ? 0 : first_beyond, to = into_columns ? first_beyond : n;
  for (int j = from; j < to; ++j) {
    const double* column = source + static_cast<std::size_t>(j) * static_cast<std::size_t>(n);
    const int at = front.in_parent[j];
    double* target =
        into_columns ? block + static_cast<std::size_t>(at) * static_cast<std::size_t>(tall)
                     : rest_of_parent +
                           static_cast<std::size_t>(at - wide) * static_cast<std::size_t>(tall - wide) - wide;
    for (const Run& run : front.runs) {
      const int skip = std::max(0, j - run.from);
      for (int i = skip; i < run.length; ++i) target[run.to + i] += column[run.from + i];
    }
  }
}

bool MultifrontalCholesky::factor_front(int s, const std::vector<double>& values, double* factor) {
  const Front& front = fronts_[s];
  const int wide = columns(s), tall = height(s), n = tall - wide;
  double* block = factor + layout_.value_start[s];
  std::fill(block, factor + layout_.value_start[s + 1], 0.0);
  for (int e = front.first_entry; e < front.last_entry; ++e)
    factor[entries_[e].target] += values[entries_[e].source];
  for (int child : front.children) take_over(child, block, nullptr, true);

  int info = 0;
  dpotrf_("L", &wide, block, &tall, &info);
  if (info != 0) return false;
  if (n == 0) return true;
  const double one = 1.0, minus_one = -1.0, zero = 0.0;
  dtrsm_("R", "L", "T", "N", &n, &wide, &one, block, &tall, block + wide, &tall);
  double* rest_block = left_over(s);
  dsyrk_("L", "N", &n, &wide, &minus_one, block + wide, &tall, &zero, rest_block, &n);
  for (int child : front.children) take_over(child, nullptr, rest_block, false);
  return true;
}

void MultifrontalCholesky::factor_part(const Part& part, const std::vector<double>& values, double* factor,
                                       std::atomic<bool>& definite) {
  for (int s : part.order)
    if (!definite || !factor_front(s, values, factor)) {
      definite = false;
      return;
    }
}

bool MultifrontalCholesky::factor(const std::vector<double>& values, double* factor) {
  std::atomic<bool> definite = true;
  both_at_once([&] { factor_part(parts_[0], values, factor, definite); },
               [&] { factor_part(parts_[1], values, factor, definite); });
  factor_part(parts_[kTop], values, factor, definite);
  return definite;
}

void MultifrontalCholesky::forward(const Part& part, const double* factor, Eigen::MatrixXd& x) const {
  const int count = static_cast<int>(x.cols()), n = static_cast<int>(x.rows());
  Eigen::MatrixXd below;
  for (int s : part.order) {
    const int wide = columns(s), tall = height(s), beyond = tall - wide;
    const double* block = factor + layout_.value_start[s];
    const int* rows = layout_.rows.data() + layout_.row_start[s] + wide;
    double* own = x.data() + layout_.first_column[s];
    solve_triangle("N", wide, block, tall, own, n, count);
    if (beyond == 0) continue;
    below.setZero(beyond, count);
    subtract_product("N", beyond, wide, block + wide, tall, own, n, below.data(), beyond, count);
    for (int c = 0; c < count; ++c)
      for (int i = 0; i < beyond; ++i) x(rows[i], c) += below(i, c);
  }
}

void MultifrontalCholesky::backward(const Part& part, const double* factor, Eigen::MatrixXd& x) const {
  const int count = static_cast<int>(x.cols()), n = static_cast<int>(x.rows());
  Eigen::MatrixXd below;
  for (auto s = part.order.rbegin(); s != part.order.rend(); ++s) {
    const int wide = columns(*s), tall = height(*s), beyond = tall - wide;
    const double* block = factor + layout_.value_start[*s];
    const int* rows = layout_.rows.data() + layout_.row_start[*s] + wide;
    double* own = x.data() + layout_.first_column[*s];
    if (beyond > 0) {
      below.resize(beyond, count);
      for (int c = 0; c < count; ++c)
        for (int i = 0; i < beyond; ++i) below(i, c) = x(rows[i], c);
      subtract_product("T", beyond, wide, block + wide, tall, below.data(), beyond, own, n, count);
    }
    solve_triangle("T", wide, block, tall, own, n, count);
  }
}

Eigen::MatrixXd MultifrontalCholesky::solve(const double* factor, const Eigen::MatrixXd& sides) const {
  const Eigen::Map<const Eigen::VectorXi> column_of(layout_.permutation.data(), sides.rows());
  Eigen::MatrixXd x = sides(column_of, Eigen::all);
  // Both halves take from the rows of the top: the second one on the side, added when both are done.
  Eigen::MatrixXd aside = Eigen::MatrixXd::Zero(x.rows(), x.cols());
  const auto columns_of = [&](int s) { return Eigen::seqN(layout_.first_column[s], columns(s)); };
  for (int s : parts_[1].order) aside(columns_of(s), Eigen::all) = x(columns_of(s), Eigen::all);
  both_at_once([&] { forward(parts_[0], factor, x); }, [&] { forward(parts_[1], factor, aside); });
  for (int s : parts_[1].order) x(columns_of(s), Eigen::all) = aside(columns_of(s), Eigen::all);
  for (int s : parts_[kTop].order) x(columns_of(s), Eigen::all) += aside(columns_of(s), Eigen::all);
  forward(parts_[kTop], factor, x);
  backward(parts_[kTop], factor, x);
  both_at_once([&] { backward(parts_[0], factor, x); }, [&] { backward(parts_[1], factor, x); });
  Eigen::MatrixXd solution(x.rows(), x.cols());
  solution(column_of, Eigen::all) = x;
  return solution;
}

}  // namespace wrapgauge
