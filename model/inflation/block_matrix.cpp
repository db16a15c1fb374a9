#include "model/inflation/block_matrix.hpp"

#include <Eigen/Sparse>
#include <algorithm>
#include <cassert>

namespace wrapgauge {

BlockMatrix::BlockMatrix(int node_count, std::vector<std::pair<int, int>> pairs, std::vector<bool> held)
    : node_count_(node_count), held_(std::move(held)) {
  for (auto& [row, column] : pairs)
    if (row < column) std::swap(row, column);
  for (int node = 0; node < node_count; ++node) pairs.emplace_back(node, node);
  std::sort(pairs.begin(), pairs.end(), [](const auto& a, const auto& b) {
    return a.second != b.second ? a.second < b.second : a.first < b.first;
  });
  pairs.erase(std::unique(pairs.begin(), pairs.end()), pairs.end());

  block_starts_.assign(node_count + 1, 0);
  for (const auto& [row, column] : pairs) {
    block_rows_.push_back(row);
    ++block_starts_[column + 1];
  }
  for (int node = 0; node < node_count; ++node) block_starts_[node + 1] += block_starts_[node];

  column_starts_.push_back(0);
  for (int node = 0; node < node_count; ++node)
    for (int c = 0; c < 3; ++c) {
      for (int b = block_starts_[node]; b < block_starts_[node + 1]; ++b)
        for (int r = 0; r < 3; ++r) row_indices_.push_back(3 * block_rows_[b] + r);
      column_starts_.push_back(static_cast<int>(row_indices_.size()));
    }
  set_zero();
}

void BlockMatrix::set_zero() {
  values_.assign(row_indices_.size() + 9, 0.0);  // nine more: where blocks of held nodes go
  for (int node = 0; node < node_count_; ++node)
    if (held_[node]) add_diagonal(node, 1.0);
}

BlockSlot BlockMatrix::slot(int row_node, int column_node) const {
  if (held_[row_node] || held_[column_node]) return {static_cast<int>(row_indices_.size()), 3, false};
  const bool transposed = row_node < column_node;
  if (transposed) std::swap(row_node, column_node);
  const auto first = block_rows_.begin() + block_starts_[column_node];
  const auto last = block_rows_.begin() + block_starts_[column_node + 1];
  const auto found = std::lower_bound(first, last, row_node);
  assert(found != last && *found == row_node);
  const int stride = 3 * static_cast<int>(last - first);
  return {column_starts_[3 * column_node] + 3 * static_cast<int>(found - first), stride, transposed};
}

void BlockMatrix::add_diagonal(int node, double value) {
  // The diagonal block is the first of its block column.
  const int stride = 3 * (block_starts_[node + 1] - block_starts_[node]);
  for (int c = 0; c < 3; ++c) values_[column_starts_[3 * node] + c * stride + c] += value;
}

Eigen::MatrixXd BlockMatrix::times(const Eigen::MatrixXd& columns) const {
  const Eigen::Map<const Eigen::SparseMatrix<double>> lower(
      rows(), rows(), static_cast<Eigen::Index>(values_.size()), column_starts_.data(), row_indices_.data(),
      values_.data());
  return lower.selfadjointView<Eigen::Lower>() * columns;
}

}  // namespace wrapgauge
