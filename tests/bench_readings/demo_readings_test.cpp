// The readings that come with the demo, which are invented and say so.

#include <gtest/gtest.h>

#include "model/bench/readings_file.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {
namespace {

TEST(DemoReadings, AreOfTheDemosLayoutAndSayThatTheyAreInvented) {
  const std::filesystem::path plans = std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources/plans";
  const auto plan = read_plan(plans / "forearm-cuff.json");
  ASSERT_TRUE(plan) << plan.problem().message;
  const auto readings = read_readings(plans / "forearm-cuff-bench/readings.csv", plan->layout);
  ASSERT_TRUE(readings) << readings.problem().message;
  EXPECT_GE(readings->rows.size(), 40u);
  EXPECT_NE(readings->remark.find("Invented"), std::string::npos);
  for (const Reading& row : readings->rows) EXPECT_FALSE(row.on_person) << row.id;
}

}  // namespace
}  // namespace wrapgauge
