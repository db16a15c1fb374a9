#include "model/layout/part_words.hpp"

#include <gtest/gtest.h>

namespace wrapgauge {
namespace {

TEST(InletLabel, SaysThatItIsAnInletOnce) {
  EXPECT_EQ(inlet_label({"pump", {0.0, 0.0}}), "inlet pump");
  EXPECT_EQ(inlet_label({"inlet 2", {0.0, 0.0}}), "inlet 2");
  EXPECT_EQ(inlet_label({"Inlet", {0.0, 0.0}}), "Inlet");
  EXPECT_EQ(inlet_label({"in", {0.0, 0.0}}), "inlet in");
}

}  // namespace
}  // namespace wrapgauge
