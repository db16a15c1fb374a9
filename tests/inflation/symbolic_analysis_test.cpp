#include "model/inflation/symbolic_analysis.hpp"

#include <gtest/gtest.h>

#include <string>

#include "tests/inflation/failing_memory.hpp"
#include "tests/inflation/sheet_matrix.hpp"
#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

constexpr int kMostPieces = 2000;  // more than any analysis here takes

TEST(SymbolicAnalysis, WithoutMemoryIsAProblemWhicheverPieceIsMissing) {
  const BlockMatrix matrix = sheet_matrix(9, 0.1);
  int pieces = 0;
  for (; pieces < kMostPieces; ++pieces) {
    const FailingMemory memory(pieces);
    const Result<SymbolicAnalysis> analysis = analyse(matrix);
    if (analysis) break;
    EXPECT_EQ(analysis.problem().kind, ProblemKind::kProgramFailed);
    EXPECT_NE(analysis.problem().message.find("ran out of memory"), std::string::npos)
        << analysis.problem().message;
    EXPECT_NE(analysis.problem().message.find("243 equations"), std::string::npos);
  }
  EXPECT_GT(pieces, 10);
  EXPECT_LT(pieces, kMostPieces);
}

TEST(SymbolicAnalysis, IsTheSameAfterOneThatFailed) {
  const BlockMatrix matrix = sheet_matrix(9, 0.1);
  const SymbolicAnalysis before = analyse(matrix).value();
  {
    const FailingMemory memory(5);
    EXPECT_FALSE(analyse(matrix));
  }
  const SymbolicAnalysis after = analyse(matrix).value();
  EXPECT_EQ(before.order, after.order);
  EXPECT_EQ(before.layout.rows, after.layout.rows);
  EXPECT_EQ(before.layout.permutation, after.layout.permutation);
}

// All the way from the library to whoever asked for a load path.
TEST(SymbolicAnalysis, ALoadPathHandsTheProblemOn) {
  const FailingMemory memory(7);
  const auto path = inflate(small::closed_cuff(0.3, 0.010), {3.0 * kPa});
  ASSERT_FALSE(path);
  EXPECT_NE(path.problem().message.find("ran out of memory"), std::string::npos) << path.problem().message;
}

}  // namespace
}  // namespace wrapgauge
