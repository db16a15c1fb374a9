#include "model/inflation/front_tree.hpp"

#include <algorithm>
#include <cassert>
#include <functional>
#include <numeric>

namespace wrapgauge {
namespace {

std::size_t square(int n) {
  return static_cast<std::size_t>(n) * static_cast<std::size_t>(n);
}

std::vector<int> supernode_of_column(const SupernodeLayout& layout) {
  std::vector<int> supernode_of(static_cast<std::size_t>(layout.first_column.back()));
  for (int s = 0; s < layout.count(); ++s)
    std::fill(supernode_of.begin() + layout.first_column[s],
              supernode_of.begin() + layout.first_column[s + 1], s);
  return supernode_of;
}

}  // namespace

FrontTree::FrontTree(const LowerColumns& pattern, SupernodeLayout layout, const FactorSettings& settings)
    : layout_(std::move(layout)), fronts_(static_cast<std::size_t>(layout_.count())) {
  link_tree();
  map_entries(pattern);
  split_tree(settings);
  for (Part& part : parts_) place(part);
}

void FrontTree::link_tree() {
  const std::vector<int> supernode_of = supernode_of_column(layout_);
  for (int s = 0; s < layout_.count(); ++s) {
    Front& front = fronts_[s];
    most_rest_ = std::max(most_rest_, rest(s));
    assert(0 < columns(s) && columns(s) <= height(s));
    const int* rows = layout_.rows.data() + layout_.row_start[s];
    assert(rows[0] == layout_.first_column[s] && std::is_sorted(rows, rows + height(s), std::less_equal<>()));
    for (int k = 0; k < columns(s); ++k) {
      const double tall = height(s) - k;
      front.work += tall * tall;
    }
    if (rest(s) == 0) continue;
    front.parent = supernode_of[rows[columns(s)]];
    assert(front.parent > s);  // so that children come before parents in the order of the supernodes
    Front& parent = fronts_[front.parent];
    parent.children.push_back(s);
    parent.work += front.work;
    const int* seek = layout_.rows.data() + layout_.row_start[front.parent];
    const int* first = seek;
    [[maybe_unused]] const int* end = layout_.rows.data() + layout_.row_start[front.parent + 1];
    for (int k = columns(s); k < height(s); ++k) {
      while (*seek != rows[k]) {
        ++seek;
        assert(seek != end);  // the parent has every row that is left over
      }
      const int at = static_cast<int>(seek - first);
      if (front.runs.empty() || front.in_parent.back() + 1 != at)
        front.runs.push_back({k - columns(s), at, 0});
      ++front.runs.back().length;
      front.in_parent.push_back(at);
    }
  }
}

void FrontTree::map_entries(const LowerColumns& pattern) {
  const std::size_t n = layout_.permutation.size();
  const std::vector<int> supernode_of = supernode_of_column(layout_);
  std::vector<int> place_of(n);
  for (std::size_t k = 0; k < n; ++k) place_of[layout_.permutation[k]] = static_cast<int>(k);
  // visit(entry, its column of L)
  const auto for_each_entry = [&](const auto& visit) {
    for (std::size_t column = 0; column < n; ++column)
      for (int k = pattern.starts[column]; k < pattern.starts[column + 1]; ++k)
        if (pattern.rows[k] >= static_cast<int>(column))  // not above the diagonal
          visit(k, std::minmax({place_of[column], place_of[pattern.rows[k]]}));
  };
  std::vector<int> next(n + 1, 0);  // by column of L
  for_each_entry([&](int, const auto& places) { ++next[places.first + 1]; });
  std::partial_sum(next.begin(), next.end(), next.begin());
  for (int s = 0; s < layout_.count(); ++s) {
    fronts_[s].first_entry = next[layout_.first_column[s]];
    fronts_[s].last_entry = next[layout_.first_column[s + 1]];
  }
  const std::vector<int> first = next;
  entries_.resize(static_cast<std::size_t>(first.back()));
  for_each_entry([&](int k, const auto& places) {
    const auto [low, high] = places;
    const int s = supernode_of[low];
    const auto rows = layout_.rows.begin() + layout_.row_start[s];
    const auto row = std::lower_bound(rows, layout_.rows.begin() + layout_.row_start[s + 1], high) - rows;
    assert(row < height(s) && rows[row] == high);
    entries_[next[low]++] = {
        k, layout_.value_start[s] + (low - layout_.first_column[s]) * height(s) + static_cast<int>(row)};
  });
  for (std::size_t column = 0; column < n; ++column)
    std::sort(entries_.begin() + first[column], entries_.begin() + first[column + 1],
              [](const Entry& a, const Entry& b) { return a.target < b.target; });
}

// The largest subtree gives way to its children until two even halves can be made of the subtrees.
void FrontTree::split_tree(const FactorSettings& settings) {
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
    if (std::max(load[0], load[1]) <= settings.even_share * (load[0] + load[1]) ||
        split == settings.most_splits)
      break;
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
// other, so that a front's children are always on top when it takes them over, for the order is a postorder.
// A subtree's own rest is kept.
void FrontTree::place(Part& part) {
  std::vector<int> depth(fronts_.size(), 0);
  for (auto s = part.order.rbegin(); s != part.order.rend(); ++s)
    if (fronts_[*s].parent >= 0) depth[*s] = depth[fronts_[*s].parent] + 1;
  std::size_t top[2] = {0, 0}, most[2] = {0, 0};
  for (int s : part.order) {
    const int side = depth[s] % 2;
    fronts_[s].left_over = top[side];
    top[side] += square(rest(s));
    most[side] = std::max(most[side], top[side]);
    const std::vector<int>& children = fronts_[s].children;
    for (auto child = children.rbegin(); child != children.rend(); ++child)
      if (part_of_[*child] == part_of_[s]) {
        assert(fronts_[*child].left_over + square(rest(*child)) == top[1 - side]);  // it is on top
        top[1 - side] = fronts_[*child].left_over;
      }
  }
  for (int s : part.order)
    if (depth[s] % 2 == 1) fronts_[s].left_over += most[0];
  part.arena_size = most[0] + most[1];
}

}  // namespace wrapgauge
