// The settings reach the solver, and those of how an equilibrium is found do not change what is found.
#include "model/inflation/solver_settings.hpp"

#include <gtest/gtest.h>

#include <iostream>
#include <string>

#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

InflationOptions in_two_steps() {
  InflationOptions options;
  options.steps = 2;
  return options;
}

double contact_force_n(const EquilibriumState& state) {
  return state.contact_pressure_pa.dot(state.contact_area_m2);
}

TEST(SolverSettings, AnotherWayToTheEquilibriumFindsTheSameOne) {
  const InflationSetup setup = small::closed_cuff(0.3, 0.010);
  const EquilibriumState usual = inflate(setup, {3.0 * kPa}, in_two_steps()).value().states.back();
  InflationOptions no_chords = in_two_steps(), short_steps = in_two_steps(), stiff = in_two_steps(),
                   split = in_two_steps();
  no_chords.settings.full_step.chords = 0;
  short_steps.settings.step.cap_m = 2e-3;
  stiff.settings.shift.floor = 1e-2;
  split.settings.factors.even_share = 0.9;
  for (const InflationOptions& options : {no_chords, short_steps, stiff, split}) {
    const auto path = inflate(setup, {3.0 * kPa}, options);
    ASSERT_TRUE(path) << path.problem().message;
    const EquilibriumState& found = path->states.back();
    const double volume = found.group_volume_m3.sum() / usual.group_volume_m3.sum();
    const double force = contact_force_n(found) / contact_force_n(usual);
    std::cout << "  volume " << volume << ", force " << force << " of the usual way's\n";
    EXPECT_NEAR(volume, 1.0, 0.005);
    EXPECT_NEAR(force, 1.0, 0.01);
  }
}

TEST(SolverSettings, APathEndsAtTheWorkThatTheyAllow) {
  InflationOptions options = in_two_steps();
  options.settings.load.work_to_start = 3;
  options.settings.load.work_to_step = 0;
  const auto path = inflate(small::closed_cuff(0.3, 0.010), {3.0 * kPa}, options);
  ASSERT_FALSE(path);
  EXPECT_EQ(path.problem().kind, ProblemKind::kNotConverged);
  EXPECT_NE(path.problem().message.find("after 3 factorisations"), std::string::npos)
      << path.problem().message;
}

// What is known to be wrong with the fit stands in the place of a finer mesh, which would not help.
TEST(SolverSettings, AFailedPathNamesTheFitThatIsKnownToBeWrongInsteadOfAFinerMesh) {
  InflationOptions options = in_two_steps();
  options.settings.load.work_to_step = 0;
  InflationSetup setup = small::closed_cuff(0.3, 0.010);
  const auto failure = [&](int work) {
    options.settings.load.work_to_start = work;
    const auto path = inflate(setup, {3.0 * kPa}, options);
    EXPECT_FALSE(path);
    return path ? std::string() : path.problem().message;
  };
  const auto has = [](const std::string& message, const char* words) {
    return message.find(words) != std::string::npos;
  };
  const auto whole = inflate(setup, {3.0 * kPa}, in_two_steps());
  ASSERT_TRUE(whole);
  const int late = whole->factorisations - 2;
  EXPECT_TRUE(has(failure(late), "finer mesh")) << failure(late);
  EXPECT_TRUE(has(failure(3), "check that the closing length")) << failure(3);
  setup.misfit = name_of("It is 11 % too tight.");
  for (const int work : {3, late}) {
    EXPECT_TRUE(has(failure(work), "correct how it fits. It is 11 % too tight.")) << failure(work);
    EXPECT_FALSE(has(failure(work), "finer mesh")) << failure(work);
  }
}

TEST(SolverSettings, TheStitchIsSoStiffThatMoreChangesNothing) {
  const auto force_with = [](double stitch_pa) {
    InflationOptions options = in_two_steps();
    options.settings.sheets.stitch_pa = stitch_pa;
    return contact_force_n(
        inflate(small::closed_cuff(0.3, 0.010), {3.0 * kPa}, options).value().states.back());
  };
  const double usual = force_with(SheetSettings{}.stitch_pa);
  EXPECT_NEAR(force_with(4.0 * SheetSettings{}.stitch_pa), usual, 0.01 * usual);
  EXPECT_LT(force_with(1e4), 0.95 * usual);  // a closing that gives way lets the pressure off
}

}  // namespace
}  // namespace wrapgauge
