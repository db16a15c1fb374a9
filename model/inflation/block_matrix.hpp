#pragma once
// A symmetric sparse matrix of 3x3 node blocks, stored as the lower triangle in compressed columns, which is
// what the factorisation reads. The pattern is laid down once; values are added block by block.

#include <array>
#include <utility>
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge {

// Where the block of a node pair lies in the value array.
struct BlockSlot {
  int offset = 0;
  int column_stride = 0;
  bool transposed = false;  // the pair was given upper triangle first
};

class BlockMatrix {
 public:
  // `pairs`: coupled node pairs in any order, repeats allowed; the diagonal is always there. Rows and columns
  // of `held` nodes are those of the identity: what is added to them is thrown away.
  BlockMatrix(int node_count, std::vector<std::pair<int, int>> pairs, std::vector<bool> held);

  int rows() const { return 3 * node_count_; }
  BlockSlot slot(int row_node, int column_node) const;

  void set_zero();
  void set_values(const std::vector<double>& values) { values_ = values; }
  void add(const BlockSlot& slot, const Mat3& block) {
    for (int c = 0; c < 3; ++c) {
      double* column = values_.data() + slot.offset + c * slot.column_stride;
      for (int r = 0; r < 3; ++r) column[r] += slot.transposed ? block(c, r) : block(r, c);
    }
  }
  void add_diagonal(int node, double value);
  Eigen::MatrixXd times(const Eigen::MatrixXd& columns) const;

  // Pattern of the node blocks, lower triangle by columns.
  const std::vector<int>& block_starts() const { return block_starts_; }
  const std::vector<int>& block_rows() const { return block_rows_; }
  const std::vector<int>& column_starts() const { return column_starts_; }
  const std::vector<int>& row_indices() const { return row_indices_; }
  const std::vector<double>& values() const { return values_; }

 private:
  int node_count_;
  std::vector<bool> held_;
  std::vector<int> block_starts_, block_rows_;  // block columns
  std::vector<int> column_starts_, row_indices_;
  std::vector<double> values_;
};

// The nodes of one element and the slots of their pairs, (0,0) (1,0) (1,1) (2,0) ...
template <int K>
struct Stencil {
  std::array<int, K> nodes{};
  std::array<BlockSlot, K*(K + 1) / 2> slots{};

  void bind(const BlockMatrix& matrix) {
    for (int i = 0, s = 0; i < K; ++i)
      for (int j = 0; j <= i; ++j, ++s) slots[s] = matrix.slot(nodes[i], nodes[j]);
  }
  template <class Block>  // Block(i, j) -> Mat3
  void scatter(BlockMatrix& matrix, const Block& block) const {
    for (int i = 0, s = 0; i < K; ++i)
      for (int j = 0; j <= i; ++j, ++s) matrix.add(slots[s], block(i, j));
  }
  void list_pairs(std::vector<std::pair<int, int>>& pairs) const {
    for (int i = 0; i < K; ++i)
      for (int j = 0; j < i; ++j) pairs.emplace_back(nodes[i], nodes[j]);
  }
};

}  // namespace wrapgauge
