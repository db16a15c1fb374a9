#include "model/core/pressure_text.hpp"

#include <gtest/gtest.h>

#include "model/core/pressure_figures.hpp"

namespace wrapgauge {
namespace {

// 3.0 x 7.5006 = 22.50, 2.9 x 7.5006 = 21.75.
TEST(PressureText, WhatReadsAlikeInKilopascalReadsAlikeInMillimetresOfMercury) {
  for (const double kilopascal : {2.951, 2.97, 3.0, 3.049})
    EXPECT_EQ(pressure_text(kilopascal * kPa), "3.0 kPa (23 mmHg)") << kilopascal;
  for (const double kilopascal : {2.851, 2.9, 2.949})
    EXPECT_EQ(pressure_text(kilopascal * kPa), "2.9 kPa (22 mmHg)") << kilopascal;
}

TEST(PressureText, TheSecondUnitStaysWithinWhatTheHeaderSays) {
  for (double pascal = -500.0; pascal < 1e5; pascal += 7.0)
    EXPECT_NEAR(std::stod(mmhg_figure(Pressure(pascal))), Pressure(pascal) / mmHg, 0.9) << pascal;
}

TEST(PressureText, NothingIsZeroInBothUnits) {
  EXPECT_EQ(pressure_text(Pressure(-0.001)), "0.0 kPa (0 mmHg)");
}

}  // namespace
}  // namespace wrapgauge
