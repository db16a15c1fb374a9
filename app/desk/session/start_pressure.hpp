#pragma once
// With what a layout that was just made is filled until someone says.

#include "model/plan/plan.hpp"

namespace wrapgauge {

// Judgement: with it the starting layouts of the forms stay within the limits on the limbs of the demo, with
// 1 kPa sleeves do not (start_pressure_test).
inline constexpr Pressure kStartPressure = 0.3 * kPa;

// Inlets of the plan's layout that are filled with nothing yet are.
void fill_unfed(Plan& plan);

}  // namespace wrapgauge
