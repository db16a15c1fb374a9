// Factorisation of a tangent: against Eigen's own sparse Cholesky, a general-purpose reference library.
#include "model/inflation/factorisation.hpp"

#include <gtest/gtest.h>

#include <Eigen/Sparse>
#include <atomic>
#include <thread>

namespace wrapgauge {
namespace {

// A sheet of `side` x `side` nodes, each coupled with its neighbours by a block that is positive definite,
// and each held to the ground by `ground`.
BlockMatrix sheet_matrix(int side, double ground) {
  std::vector<std::pair<int, int>> pairs;
  for (int i = 0; i < side; ++i)
    for (int j = 0; j < side; ++j) {
      if (i + 1 < side) pairs.emplace_back(i * side + j, (i + 1) * side + j);
      if (j + 1 < side) pairs.emplace_back(i * side + j, i * side + j + 1);
    }
  BlockMatrix matrix(side * side, pairs, std::vector<bool>(static_cast<std::size_t>(side * side), false));
  for (std::size_t k = 0; k < pairs.size(); ++k) {
    const Vec3 along = Vec3(1.0 + static_cast<double>(k % 7), static_cast<double>(k % 5), 2.0).normalized();
    const Mat3 block = 10.0 * along * along.transpose() + Mat3::Identity();
    Stencil<2> stencil{{pairs[k].first, pairs[k].second}, {}};
    stencil.bind(matrix);
    stencil.scatter(matrix, [&](int i, int j) -> Mat3 { return i == j ? block : Mat3(-block); });
  }
  for (int node = 0; node < side * side; ++node) matrix.add_diagonal(node, ground);
  return matrix;
}

Eigen::SparseMatrix<double> eigen_matrix(const BlockMatrix& matrix) {
  std::vector<Eigen::Triplet<double>> entries;
  for (int column = 0; column < matrix.rows(); ++column)
    for (int k = matrix.column_starts()[column]; k < matrix.column_starts()[column + 1]; ++k)
      if (matrix.row_indices()[k] >= column)
        entries.emplace_back(matrix.row_indices()[k], column, matrix.values()[k]);
  Eigen::SparseMatrix<double> lower(matrix.rows(), matrix.rows());
  lower.setFromTriplets(entries.begin(), entries.end());
  return lower;
}

class SheetFactorisation : public testing::TestWithParam<int> {};

TEST_P(SheetFactorisation, SolvesLikeAReferenceLibrary) {
  const BlockMatrix matrix = sheet_matrix(GetParam(), 0.1);
  Factorisation factorisation(matrix);
  ASSERT_TRUE(factorisation.factor_definite(matrix));
  const Eigen::VectorXd side = Eigen::VectorXd::LinSpaced(matrix.rows(), -1.0, 2.0);
  const Eigen::VectorXd solved = factorisation.solve(side);
  const Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>, Eigen::Lower> reference(eigen_matrix(matrix));
  const Eigen::VectorXd expected = reference.solve(side);
  EXPECT_LT((solved - expected).norm(), 1e-11 * expected.norm());
}

TEST_P(SheetFactorisation, GivesTheSameBytesEveryTime) {
  const BlockMatrix matrix = sheet_matrix(GetParam(), 0.1);
  const Eigen::VectorXd side = Eigen::VectorXd::LinSpaced(matrix.rows(), -1.0, 2.0);
  Factorisation one(matrix), two(matrix);
  ASSERT_TRUE(one.factor_definite(matrix) && two.factor_definite(matrix) && two.factor_definite(matrix));
  const Eigen::MatrixXd first = one.solve(side), second = two.solve(side);
  EXPECT_TRUE((first.array() == second.array()).all());
}

// A spread solves several runs side by side, and the ordering draws from a generator that threads share.
TEST_P(SheetFactorisation, GivesTheSameBytesWhenOthersAreMadeAtTheSameTime) {
  const BlockMatrix matrix = sheet_matrix(GetParam(), 0.1);
  const Eigen::VectorXd side = Eigen::VectorXd::LinSpaced(matrix.rows(), -1.0, 2.0);
  const auto solved = [&] {
    Factorisation factorisation(matrix);
    return factorisation.factor_definite(matrix) ? factorisation.solve(side) : Eigen::MatrixXd();
  };
  const Eigen::MatrixXd alone = solved();
  std::atomic<int> different = 0;
  const auto work = [&] {
    for (int i = 0; i < 10; ++i) {
      const Eigen::MatrixXd again = solved();
      if (again.size() != alone.size() || !(again.array() == alone.array()).all()) ++different;
    }
  };
  std::thread one(work), two(work), three(work);
  one.join(), two.join(), three.join();
  EXPECT_EQ(different, 0);
}

TEST_P(SheetFactorisation, RefusesAMatrixThatIsNotDefiniteAndGoesOnWithTheNext) {
  const BlockMatrix good = sheet_matrix(GetParam(), 0.1), bad = sheet_matrix(GetParam(), -0.5);
  Factorisation factorisation(good);
  EXPECT_FALSE(factorisation.factor_definite(bad));
  ASSERT_TRUE(factorisation.factor_definite(good));
  const Eigen::VectorXd side = Eigen::VectorXd::Ones(good.rows());
  const Eigen::VectorXd solved = factorisation.solve(side);
  const Eigen::VectorXd back = eigen_matrix(good).selfadjointView<Eigen::Lower>() * solved;
  EXPECT_LT((back - side).norm(), 1e-10 * side.norm());
}

TEST_P(SheetFactorisation, TellsWhatIsDefiniteWithoutKeepingFactors) {
  const BlockMatrix good = sheet_matrix(GetParam(), 0.1);
  Factorisation factorisation(good);
  for (double ground : {0.1, 1e-6, -1e-6, -0.5}) {
    const BlockMatrix matrix = sheet_matrix(GetParam(), ground);
    EXPECT_EQ(factorisation.is_definite(matrix), factorisation.factor_definite(matrix)) << ground;
    EXPECT_EQ(factorisation.is_definite(matrix), ground > 0.0) << ground;
  }
}

double left_over(const BlockMatrix& matrix, const Eigen::VectorXd& solved, const Eigen::VectorXd& side) {
  const Eigen::VectorXd back = eigen_matrix(matrix).selfadjointView<Eigen::Lower>() * solved;
  return (back - side).norm() / side.norm();
}

TEST_P(SheetFactorisation, InSingleDigitsLeavesOverLessThanAThousandth) {
  BlockMatrix matrix = sheet_matrix(GetParam(), 0.1);
  const BlockMatrix kept = matrix;
  Factorisation factorisation(matrix);
  ASSERT_TRUE(factorisation.factor_definite(matrix, Digits::kSingle));
  matrix.set_zero();  // solutions are those of what was factored
  const Eigen::VectorXd side = Eigen::VectorXd::LinSpaced(matrix.rows(), -1.0, 2.0);
  for (int again = 0; again < 2; ++again) EXPECT_LT(left_over(kept, factorisation.solve(side), side), 1e-3);
  EXPECT_FALSE(factorisation.factor_definite(sheet_matrix(GetParam(), -0.5), Digits::kSingle));
  ASSERT_TRUE(factorisation.factor_definite(kept));
  EXPECT_LT(left_over(kept, factorisation.solve(side), side), 1e-10);
}

// A sheet that next to nothing holds to the ground, pushed as a whole: single digits alone do not tell how
// far it goes.
TEST_P(SheetFactorisation, InSingleDigitsCorrectsWhatTheyDoNotTell) {
  const BlockMatrix matrix = sheet_matrix(GetParam(), 2e-5);
  const Eigen::VectorXd side = Eigen::VectorXd::Ones(matrix.rows());
  Factorisation factorisation(matrix);
  if (!factorisation.factor_definite(matrix, Digits::kSingle)) return;  // rounding may refuse it
  EXPECT_LT(left_over(matrix, factorisation.solve(side), side), 1e-3);
  EXPECT_LT(left_over(matrix, factorisation.solve(2.0 * side), 2.0 * side), 1e-3);
}

TEST_P(SheetFactorisation, MultipliesLikeAReferenceLibrary) {
  const BlockMatrix matrix = sheet_matrix(GetParam(), 0.1);
  Eigen::MatrixXd columns(matrix.rows(), 2);
  columns.col(0).setLinSpaced(-1.0, 2.0);
  columns.col(1).setLinSpaced(3.0, 1.0);
  const Eigen::MatrixXd expected = eigen_matrix(matrix).selfadjointView<Eigen::Lower>() * columns;
  EXPECT_LT((matrix.times(columns) - expected).norm(), 1e-13 * expected.norm());
}

INSTANTIATE_TEST_SUITE_P(Sizes, SheetFactorisation, testing::Values(1, 2, 5, 24));

}  // namespace
}  // namespace wrapgauge
