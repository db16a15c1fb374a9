#include "app/desk/session/forward_progress.hpp"

#include <gtest/gtest.h>

#include <random>
#include <vector>

namespace wrapgauge {
namespace {

class Told : public Progress {
 public:
  void report(std::string_view, double fraction) override { fractions.push_back(fraction); }
  std::vector<double> fractions;
};

TEST(ForwardProgress, NeverGoesBackHoweverTheSolvesBeginAgain) {
  std::mt19937 any(7);
  std::uniform_real_distribution<double> fraction(0.0, 1.0);
  Told told;
  ForwardProgress all(told, 0.08);
  for (int k = 0; k < 500; ++k) all.report("inflating", fraction(any));
  for (std::size_t k = 1; k < told.fractions.size(); ++k)
    ASSERT_GE(told.fractions[k], told.fractions[k - 1]) << k;
  EXPECT_LE(told.fractions.back(), 1.0);
  EXPECT_GE(told.fractions.front(), 0.0);
}

// Closed form: after n whole solves 1 - (1 - part)^n of the way.
TEST(ForwardProgress, EachSolveTakesItsPartOfWhatIsLeft) {
  Told told;
  ForwardProgress all(told, 0.25);
  for (int solve = 0; solve < 3; ++solve)
    for (const double fraction : {0.0, 0.5, 1.0}) all.report("inflating", fraction);
  EXPECT_DOUBLE_EQ(told.fractions.back(), 1.0 - 0.75 * 0.75 * 0.75);
  EXPECT_DOUBLE_EQ(told.fractions[2], 0.25);
}

}  // namespace
}  // namespace wrapgauge
