#pragma once
#include <numeric>
#include <utility>
#include <vector>

namespace wrapgauge {

// Disjoint sets of 0..n-1; the root of a set is its lowest member.
class UnionFind {
 public:
  explicit UnionFind(int size) : parent_(size) { std::iota(parent_.begin(), parent_.end(), 0); }

  int root(int i) {
    while (parent_[i] != i) i = parent_[i] = parent_[parent_[i]];
    return i;
  }
  void join(int a, int b) {
    a = root(a);
    b = root(b);
    if (b < a) std::swap(a, b);
    parent_[b] = a;
  }

 private:
  std::vector<int> parent_;
};

}  // namespace wrapgauge
