#include "model/core/time_text.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

TEST(TimeText, UsesTheUnitPeopleWouldUse) {
  EXPECT_EQ(time_text(0.046 * second), "0.05 s");
  EXPECT_EQ(time_text(2.0 * second), "2 s");
  EXPECT_EQ(time_text(0.73 * second), "0.7 s");
  EXPECT_EQ(time_text(90.0 * second), "90 s");
  EXPECT_EQ(time_text(50.0 * minute), "50 min");
  EXPECT_EQ(time_text(12.5 * minute), "12.5 min");
  EXPECT_EQ(time_text(60.0 * minute), "1 h");
  EXPECT_EQ(time_text(120.0 * minute), "2 h");
  EXPECT_EQ(time_text(100.0 * minute), "100 min");
}

}  // namespace
}  // namespace wrapgauge
