// The dense loops of a front against Eigen's Cholesky factors, a general-purpose reference, for each kind of
// vector that this processor has and for sizes around the number of rows that fit into one.
#include "model/inflation/front_kernels.hpp"

#include <gtest/gtest.h>

#include <Eigen/Dense>
#include <limits>
#include <utility>

namespace wrapgauge {
namespace {

template <class Real>
class FrontKernelsTest : public ::testing::Test {};
using Precisions = ::testing::Types<float, double>;
TYPED_TEST_SUITE(FrontKernelsTest, Precisions);

constexpr std::pair<int, int> kSizes[] = {{1, 1},    {1, 2},    {3, 3},   {5, 9},   {6, 22},
                                          {7, 23},   {12, 28},  {13, 45}, {16, 48}, {17, 33},
                                          {31, 100}, {33, 160}, {70, 70}};

template <class Real>
using Dense = Eigen::Matrix<Real, Eigen::Dynamic, Eigen::Dynamic>;

// Well conditioned: ones and tens on the diagonal, less than one beside it.
template <class Real>
Dense<Real> definite(int size) {
  const Dense<Real> any = Dense<Real>::Random(size, size) / Real(size);
  return any * any.transpose() + Dense<Real>(Dense<Real>::Identity(size, size) * Real(2));
}

template <class Real>
Real tolerance(int size) {
  return Real(20 * size) * std::numeric_limits<Real>::epsilon();
}

TYPED_TEST(FrontKernelsTest, FactorsColumnsAndLeavesTheRest) {
  using Real = TypeParam;
  for (const FrontKernels<Real>& kernels : front_kernels<Real>())
    for (const auto& [wide, tall] : kSizes) {
      SCOPED_TRACE(testing::Message() << kernels.vector_bytes << " bytes, " << wide << " of " << tall);
      const int rest = tall - wide;
      const Dense<Real> whole = definite<Real>(tall);
      Dense<Real> block = whole.leftCols(wide);
      ASSERT_TRUE(kernels.factor_columns(wide, tall, block.data()));
      const Dense<Real> factor = whole.llt().matrixL();
      for (int j = 0; j < wide; ++j)
        EXPECT_LT((block.col(j).tail(tall - j) - factor.col(j).tail(tall - j)).cwiseAbs().maxCoeff(),
                  tolerance<Real>(tall));
      if (rest == 0) continue;
      Dense<Real> left(rest, rest);
      kernels.set_to_minus_square(rest, wide, block.data() + wide, tall, left.data());
      const Dense<Real> below = block.bottomRows(rest);
      const Dense<Real> expected = -below * below.transpose();
      for (int j = 0; j < rest; ++j)
        EXPECT_LT((left.col(j).tail(rest - j) - expected.col(j).tail(rest - j)).cwiseAbs().maxCoeff(),
                  tolerance<Real>(tall));
    }
}

TYPED_TEST(FrontKernelsTest, SolvesForwardAndBackward) {
  using Real = TypeParam;
  using Vector = Eigen::Matrix<Real, Eigen::Dynamic, 1>;
  for (const FrontKernels<Real>& kernels : front_kernels<Real>())
    for (const auto& [wide, tall] : kSizes) {
      SCOPED_TRACE(testing::Message() << kernels.vector_bytes << " bytes, " << wide << " of " << tall);
      const int rest = tall - wide;
      Dense<Real> block = definite<Real>(tall).leftCols(wide);
      ASSERT_TRUE(kernels.factor_columns(wide, tall, block.data()));
      const Dense<Real> square = block.topRows(wide).template triangularView<Eigen::Lower>();
      const Dense<Real> beyond = block.bottomRows(rest);
      const Vector side = Vector::Random(wide), carried = Vector::Random(rest);
      Vector own = side, below = carried;
      kernels.forward(wide, tall, block.data(), own.data(), below.data());
      EXPECT_LT((square * own - side).cwiseAbs().maxCoeff(), tolerance<Real>(tall));
      EXPECT_LT((below - (carried - beyond * own)).norm(), tolerance<Real>(tall));
      own = side;
      kernels.backward(wide, tall, block.data(), own.data(), carried.data());
      EXPECT_LT((square.transpose() * own - (side - beyond.transpose() * carried)).cwiseAbs().maxCoeff(),
                tolerance<Real>(tall));
    }
}

TYPED_TEST(FrontKernelsTest, SaysWhatIsNotDefinite) {
  using Real = TypeParam;
  for (const FrontKernels<Real>& kernels : front_kernels<Real>())
    for (int bad : {0, 6, 16, 29}) {
      Dense<Real> square = definite<Real>(30);
      square(bad, bad) = Real(-1);
      EXPECT_FALSE(kernels.factor_columns(30, 30, square.data())) << kernels.vector_bytes << ", " << bad;
      square = definite<Real>(30);
      square(bad, bad) = std::numeric_limits<Real>::quiet_NaN();
      EXPECT_FALSE(kernels.factor_columns(30, 30, square.data())) << kernels.vector_bytes << ", " << bad;
    }
}

}  // namespace
}  // namespace wrapgauge
