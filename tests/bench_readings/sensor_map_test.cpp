#include "model/bench/sensor_map.hpp"

#include <gtest/gtest.h>

#include "model/bench/readings_file.hpp"
#include "model/core/file.hpp"
#include "tests/bench_readings/bench_rows.hpp"

namespace wrapgauge {
namespace {

class SensorMapFile : public testing::Test {
 protected:
  Result<SensorMap> read(const std::string& cells, const std::string& unit = "kpa") const {
    const std::string block = "layout_hash," + layout_hash(plan_.layout) + "\ngauge_kpa,2\nunit," + unit +
                              "\nlow_left_x_mm,60\nlow_left_y_mm,10\nlow_right_x_mm,110\nlow_right_y_mm,10\n"
                              "up_left_x_mm,60\nup_left_y_mm,40\n";
    const auto file = folder_.path() / "map.csv";
    EXPECT_TRUE(write_file_atomically(file, block + cells));
    return read_sensor_map(file, plan_.layout);
  }

  small_band::Folder folder_{"sensor-map"};
  Plan plan_ = small_band::plan(2.0 * kPa);
};

TEST_F(SensorMapFile, LiesOnTheLayoutByItsCornersTheUpperRowFirst) {
  const auto map = read("row,a,b\n1,1,2\n2,3,4\n3,5,6\n");
  ASSERT_TRUE(map) << map.problem().message;
  EXPECT_DOUBLE_EQ(map->pressure_pa(0, 1), 2000.0);
  EXPECT_NEAR(map->middle_m(0, 0).x(), 0.0725, 1e-12);
  EXPECT_NEAR(map->middle_m(0, 0).y(), 0.035, 1e-12);
  EXPECT_NEAR(map->middle_m(2, 1).y(), 0.015, 1e-12);
  EXPECT_NEAR(map->cell().si(), 0.025 * 0.010, 1e-12);
}

TEST_F(SensorMapFile, RefusesWhatItCannotPlaceOrRead) {
  const auto negative = read("row,a\n1,-1\n");
  ASSERT_FALSE(negative);
  EXPECT_NE(negative.problem().message.find("column 2 is '-1': write a pressure of 0 or more"),
            std::string::npos);
  const auto unit = read("row,a\n1,1\n", "psi");
  ASSERT_FALSE(unit);
  EXPECT_NE(unit.problem().message.find("does not say the unit of its cells"), std::string::npos);
}

// A map that is the prediction itself: nothing is left.
TEST_F(SensorMapFile, AgreesWithItsOwnPrediction) {
  auto map = read("row,a,b,c\n1,1,1,1\n2,1,1,1\n3,1,1,1\n");
  ASSERT_TRUE(map);
  const Body body = small_band::body();
  const Resources resources = small_band::resources();
  const BenchJob of{plan_, body, resources, 14.0 * mm};
  const auto first = compare_map(of, *map, silent_progress());
  ASSERT_TRUE(first) << first.problem().message;
  EXPECT_EQ(first->cells, 9);
  SensorMap same = *map;
  same.pressure_pa = first->predicted_pa;
  const auto again = compare_map(of, same, silent_progress());
  ASSERT_TRUE(again);
  EXPECT_NEAR(again->bias.si(), 0.0, 1e-6);
  EXPECT_NEAR(again->correlation, 1.0, 1e-9);
  EXPECT_NEAR(again->worst_read / again->worst_predicted, 1.0, 1e-9);
  ASSERT_EQ(again->chambers.size(), 1u);
  same.pressure_pa.array() += 500.0;
  const auto higher = compare_map(of, same, silent_progress());
  ASSERT_TRUE(higher);
  EXPECT_NEAR(higher->bias.si(), 500.0, 1e-6);
}

}  // namespace
}  // namespace wrapgauge
