#include "model/core/counted.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

TEST(Counted, OneThingIsNotSaidInThePlural) {
  EXPECT_EQ(counted(0, "strap"), "0 straps");
  EXPECT_EQ(counted(1, "strap"), "1 strap");
  EXPECT_EQ(counted(2, "strap"), "2 straps");
}

}  // namespace
}  // namespace wrapgauge
