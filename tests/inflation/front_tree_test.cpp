// What the fronts rely on, looked at from outside for sheets and for random matrices, and the factors that
// are made with them against dense ones.
#include "model/inflation/front_tree.hpp"

#include <gtest/gtest.h>

#include <Eigen/Cholesky>
#include <algorithm>
#include <map>
#include <numeric>

#include "model/inflation/multifrontal_cholesky.hpp"
#include "model/inflation/symbolic_analysis.hpp"
#include "tests/inflation/sheet_matrix.hpp"

namespace wrapgauge {
namespace {

std::vector<BlockMatrix> matrices() {
  std::vector<BlockMatrix> all = {sheet_matrix(1, 0.1), sheet_matrix(4, 0.1), sheet_matrix(17, 0.1)};
  for (unsigned seed = 1; seed <= 12; ++seed) {
    const int nodes = 2 + static_cast<int>(seed * seed);
    all.push_back(random_matrix(nodes, nodes * static_cast<int>(seed % 4), 0.5, seed));
  }
  return all;
}

std::shared_ptr<const FrontTree> tree_of(const BlockMatrix& matrix) {
  return std::make_shared<const FrontTree>(LowerColumns{matrix.column_starts(), matrix.row_indices()},
                                           analyse(matrix).value().layout);
}

std::vector<int> rows_of(const FrontTree& tree, int s) {
  const SupernodeLayout& layout = tree.layout();
  return {layout.rows.begin() + layout.row_start[s], layout.rows.begin() + layout.row_start[s + 1]};
}

TEST(FrontTree, EveryRowThatIsLeftOverHasItsPlaceInTheParent) {
  for (const BlockMatrix& matrix : matrices()) {
    const auto tree = tree_of(matrix);
    for (int s = 0; s < tree->layout().count(); ++s) {
      const FrontTree::Front& front = tree->front(s);
      const std::vector<int> rows = rows_of(*tree, s);
      ASSERT_EQ(front.parent < 0, tree->rest(s) == 0);
      if (front.parent < 0) continue;
      const std::vector<int> above = rows_of(*tree, front.parent);
      ASSERT_EQ(static_cast<int>(front.in_parent.size()), tree->rest(s));
      for (int k = 0; k < tree->rest(s); ++k)
        EXPECT_EQ(above[front.in_parent[k]], rows[tree->columns(s) + k]);
      std::vector<int> by_runs;
      for (const FrontTree::Run& run : front.runs)
        for (int k = 0; k < run.length; ++k) by_runs.push_back(run.to + k);
      EXPECT_EQ(by_runs, front.in_parent);
    }
  }
}

TEST(FrontTree, ChildrenComeBeforeParentsAndTheHalvesDoNotMeet) {
  for (const BlockMatrix& matrix : matrices()) {
    const auto tree = tree_of(matrix);
    std::vector<int> seen;
    for (std::size_t p = 0; p < tree->parts().size(); ++p)
      for (int s : tree->parts()[p].order) {
        seen.push_back(s);
        EXPECT_EQ(tree->part_of(s), static_cast<int>(p));
        const int parent = tree->front(s).parent;
        if (parent < 0) continue;
        EXPECT_LT(s, parent);
        EXPECT_TRUE(tree->part_of(parent) == static_cast<int>(p) || tree->part_of(parent) == FrontTree::kTop);
      }
    std::sort(seen.begin(), seen.end());
    std::vector<int> all(static_cast<std::size_t>(tree->layout().count()));
    std::iota(all.begin(), all.end(), 0);
    EXPECT_EQ(seen, all);
  }
}

// Plays a part's work through: what a front leaves over must lie beside all that is still waited for.
void expect_room_in_arena(const FrontTree& tree, const FrontTree::Part& part) {
  std::map<std::size_t, std::size_t> waiting;  // end by start
  for (int s : part.order) {
    const auto size = static_cast<std::size_t>(tree.rest(s)) * static_cast<std::size_t>(tree.rest(s));
    const std::size_t from = tree.front(s).left_over, to = from + size;
    ASSERT_LE(to, part.arena_size);
    for (const auto& [start, end] : waiting)
      ASSERT_TRUE(size == 0 || to <= start || end <= from) << "front " << s;
    for (int child : tree.front(s).children)
      if (tree.part_of(child) == tree.part_of(s)) waiting.erase(tree.front(child).left_over);
    if (size > 0) waiting[from] = to;
  }
}

TEST(FrontTree, WhatIsLeftOverIsNeverOverwrittenBeforeItIsTakenOver) {
  for (const BlockMatrix& matrix : matrices()) {
    const auto tree = tree_of(matrix);
    for (const FrontTree::Part& part : tree->parts()) expect_room_in_arena(*tree, part);
  }
}

TEST(FrontTree, EveryEntryOfTheMatrixGoesToOnePlaceOfTheFactor) {
  for (const BlockMatrix& matrix : matrices()) {
    const auto tree = tree_of(matrix);
    std::vector<int> sources, targets;
    for (const FrontTree::Entry& entry : tree->entries()) {
      sources.push_back(entry.source);
      targets.push_back(entry.target);
      EXPECT_LT(entry.target, tree->layout().value_start.back());
    }
    std::sort(sources.begin(), sources.end());
    std::sort(targets.begin(), targets.end());
    EXPECT_EQ(std::adjacent_find(sources.begin(), sources.end()), sources.end());
    EXPECT_EQ(std::adjacent_find(targets.begin(), targets.end()), targets.end());
    EXPECT_EQ(static_cast<Eigen::Index>(sources.size()), eigen_matrix(matrix).nonZeros());
  }
}

template <class Real>
void expect_solved_like_dense(const BlockMatrix& matrix, double tolerance) {
  MultifrontalCholesky<Real> factors(tree_of(matrix));
  ASSERT_TRUE(factors.factor(matrix.values()));
  EXPECT_TRUE(factors.is_definite(matrix.values()));
  const Eigen::MatrixXd sides = Eigen::MatrixXd::Random(matrix.rows(), 3);
  const Eigen::MatrixXd dense = Eigen::MatrixXd(eigen_matrix(matrix)).selfadjointView<Eigen::Lower>();
  const Eigen::MatrixXd expected = dense.llt().solve(sides);
  EXPECT_LT((factors.solve(sides) - expected).norm(), tolerance * expected.norm()) << matrix.rows();
}

TEST(MultifrontalCholesky, SolvesRandomMatricesLikeDenseFactors) {
  for (const BlockMatrix& matrix : matrices()) {
    expect_solved_like_dense<double>(matrix, 1e-11);
    expect_solved_like_dense<float>(matrix, 1e-2);
  }
}

}  // namespace
}  // namespace wrapgauge
