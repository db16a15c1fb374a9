#include "model/pipeline/solve_forecast.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace wrapgauge {
namespace {

// One chamber in a square; nothing is put on, for the forecast only counts.
Prepared square_of(double edge_mm) {
  Prepared prepared;
  Layout& layout = prepared.setup.layout;
  layout.outline_m = {{0.0, 0.0}, {0.06, 0.0}, {0.06, 0.06}, {0.0, 0.06}};
  layout.chambers = {{"cell", {{0.01, 0.01}, {0.05, 0.01}, {0.05, 0.05}, {0.01, 0.05}}, {}, {}}};
  layout.inlets = {{"tube", {0.03, 0.03}}};
  layout.skin_sheet = layout.outer_sheet = {"00-30", 2.0 * mm};
  auto flat = triangulate_layout(layout, std::nullopt, {.edge = edge_mm * mm, .seam_edge = edge_mm * mm});
  EXPECT_TRUE(flat.ok());
  if (flat) prepared.setup.flat = std::move(flat).value();
  return prepared;
}

TEST(SolveForecast, FollowsTheMeasuredLawInNodesStatesAndSolves) {
  Plan plan;
  Prepared prepared = square_of(4.0);
  prepared.setup.layout.rim_bonded = true;
  const SolveForecast coarse = forecast_solve(plan, prepared, {.mesh_error = false, .relief = false});
  EXPECT_EQ(coarse.nodes, make_sheet_mesh(prepared.setup.flat).node_count);
  EXPECT_NEAR(coarse.time.si(), 0.51 * std::pow(coarse.nodes / 2815.0, 1.33),
              1e-9);  // six steps: as measured
  prepared = square_of(1.0);
  prepared.setup.layout.rim_bonded = true;
  const SolveForecast fine = forecast_solve(plan, prepared, {.mesh_error = false, .relief = false});
  EXPECT_GT(fine.nodes, 8 * coarse.nodes);
  EXPECT_NEAR(std::log(fine.time / coarse.time) / std::log(double(fine.nodes) / coarse.nodes), 1.33, 1e-9);
  EXPECT_NEAR(forecast_solve(plan, prepared).time / fine.time, 2.3, 1e-9);
  plan.solver.steps = 13;
  EXPECT_NEAR(forecast_solve(plan, prepared, {.mesh_error = false, .relief = false}).time / fine.time, 2.0,
              1e-9);
}

TEST(SolveForecast, WhatNothingHoldsIsForecastLongerAndMinutesAreSaid) {
  const Plan plan;
  Prepared prepared = square_of(1.0);
  const SolveForecast loose = forecast_solve(plan, prepared);
  EXPECT_FALSE(loose.held);
  const auto words = long_solve_words(loose);
  ASSERT_TRUE(words);
  EXPECT_NE(words->find(std::to_string(loose.nodes) + " nodes, and nothing holds the layout"),
            std::string::npos)
      << *words;
  prepared.setup.layout.rim_bonded = true;
  EXPECT_FALSE(long_solve_words(forecast_solve(plan, prepared))) << "seconds are not worth a word";
}

TEST(SolveForecast, IsRoundedInMinutesOrHours) {
  const auto said = [](double seconds) {
    const auto words = long_solve_words({.nodes = 9, .solves = 1.0, .held = true, .time = Time(seconds)});
    return words ? words->substr(words->find("about "), 14) : "";
  };
  EXPECT_EQ(said(59.0), "");
  EXPECT_EQ(said(61.0), "about 1 min (9");
  EXPECT_EQ(said(23.0 * 60.0), "about 25 min (");
  EXPECT_EQ(said(3.2 * 3600.0), "about 3 h (9 n");
}

}  // namespace
}  // namespace wrapgauge
