#pragma once
// Matrices of the kind that the tangent of a sheet is, and random ones.
#include <Eigen/SparseCore>
#include <random>
#include <utility>
#include <vector>

#include "model/inflation/block_matrix.hpp"

namespace wrapgauge {

// Each pair of nodes coupled by a block that is positive definite, each node held to the ground by `ground`.
inline BlockMatrix coupled_matrix(int nodes, const std::vector<std::pair<int, int>>& pairs, double ground) {
  BlockMatrix matrix(nodes, pairs, std::vector<bool>(static_cast<std::size_t>(nodes), false));
  for (std::size_t k = 0; k < pairs.size(); ++k) {
    const Vec3 along = Vec3(1.0 + static_cast<double>(k % 7), static_cast<double>(k % 5), 2.0).normalized();
    const Mat3 block = 10.0 * along * along.transpose() + Mat3::Identity();
    Stencil<2> stencil{{pairs[k].first, pairs[k].second}, {}};
    stencil.bind(matrix);
    stencil.scatter(matrix, [&](int i, int j) -> Mat3 { return i == j ? block : Mat3(-block); });
  }
  for (int node = 0; node < nodes; ++node) matrix.add_diagonal(node, ground);
  return matrix;
}

// A sheet of `side` x `side` nodes, each coupled with its neighbours.
inline BlockMatrix sheet_matrix(int side, double ground) {
  std::vector<std::pair<int, int>> pairs;
  for (int i = 0; i < side; ++i)
    for (int j = 0; j < side; ++j) {
      if (i + 1 < side) pairs.emplace_back(i * side + j, (i + 1) * side + j);
      if (j + 1 < side) pairs.emplace_back(i * side + j, i * side + j + 1);
    }
  return coupled_matrix(side * side, pairs, ground);
}

// Any nodes coupled, `couplings` times by chance; parts may hang together by nothing.
inline BlockMatrix random_matrix(int nodes, int couplings, double ground, unsigned seed) {
  std::mt19937 random(seed);
  std::vector<std::pair<int, int>> pairs;
  for (int k = 0; k < couplings; ++k) {
    const int a = static_cast<int>(random() % static_cast<unsigned>(nodes));
    const int b = static_cast<int>(random() % static_cast<unsigned>(nodes));
    if (a != b) pairs.emplace_back(a, b);
  }
  return coupled_matrix(nodes, pairs, ground);
}

// The lower triangle in the reference library's own form.
inline Eigen::SparseMatrix<double> eigen_matrix(const BlockMatrix& matrix) {
  std::vector<Eigen::Triplet<double>> entries;
  for (int column = 0; column < matrix.rows(); ++column)
    for (int k = matrix.column_starts()[column]; k < matrix.column_starts()[column + 1]; ++k)
      if (matrix.row_indices()[k] >= column)
        entries.emplace_back(matrix.row_indices()[k], column, matrix.values()[k]);
  Eigen::SparseMatrix<double> lower(matrix.rows(), matrix.rows());
  lower.setFromTriplets(entries.begin(), entries.end());
  return lower;
}

}  // namespace wrapgauge
