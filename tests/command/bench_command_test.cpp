// `wrapgauge bench` as a user meets it, on a coarse mesh. Every reading here is invented.

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "tests/command/command_test.hpp"
#include "tests/command/small_band_plan.hpp"

namespace wrapgauge {
namespace {

class BenchCommands : public CommandTest {
 protected:
  std::string plan() const { return write("plan.json", small_band_plan(2.0).dump()); }
  Answer sheet() const { return run({"bench", "sheet", plan(), "--out", path("sheet"), "--edge-mm", "14"}); }
  // The row of the sheet's own table.
  std::string layout_hash() const {
    std::istringstream lines(bytes("sheet/readings.csv"));
    for (std::string line; std::getline(lines, line);)
      if (line.starts_with("layout_hash,")) return line + "\n";
    return "";
  }
  // A grid of 4 by 4 cells over the pad, which lies from (60, 10) to (110, 40) mm, all of one pressure.
  std::string grid(const std::string& first_row, const std::string& kpa, double left_mm = 70.0) const {
    std::string text = first_row + "gauge_kpa,2\nunit,kpa\nremark,invented for a test\n";
    const std::string left = std::to_string(left_mm), right = std::to_string(left_mm + 30.0);
    text += "low_left_x_mm," + left + "\nlow_left_y_mm,15\nlow_right_x_mm," + right +
            "\nlow_right_y_mm,15\nup_left_x_mm," + left + "\nup_left_y_mm,35\nrow,a,b,c,d\n";
    for (int row = 1; row <= 4; ++row) {
      text += std::to_string(row);
      for (int column = 0; column < 4; ++column) text += "," + kpa;
      text += "\n";
    }
    return text;
  }
  Answer compare(const std::string& out, const std::string& map) const {
    return run({"bench", "compare", plan(), write(out + ".csv", map), "--out", path(out), "--edge-mm", "14"});
  }
  // Cells, read and predicted kPa of the only chamber.
  std::vector<double> figures(const std::string& out) const {
    std::istringstream lines(bytes(out + "/comparison.csv"));
    std::string heading, row, cell;
    std::getline(lines, heading);
    std::getline(lines, row);
    std::istringstream cells(row);
    std::vector<double> numbers;
    for (int k = 0; std::getline(cells, cell, ','); ++k)
      if (k == 1 || k == 2 || k == 4) numbers.push_back(std::stod(cell));
    return numbers;
  }
};

TEST_F(BenchCommands, HoldAMapOfSensorsAgainstThePredictedOne) {
  ASSERT_EQ(sheet().code, kExitDone);
  ASSERT_FALSE(layout_hash().empty());
  const Answer one = compare("one", grid(layout_hash(), "1.0"));
  ASSERT_EQ(one.code, kExitDone) << one.err;
  ASSERT_EQ(compare("two", grid(layout_hash(), "2.5")).code, kExitDone);
  const auto first = figures("one"), second = figures("two");
  ASSERT_EQ(first.size(), 3u);
  ASSERT_EQ(second.size(), 3u);
  EXPECT_EQ(first[0], 16.0);  // every cell lies on the pad
  EXPECT_NEAR(first[1], 1.0, 1e-9);
  EXPECT_NEAR(second[1], 2.5, 1e-9);
  EXPECT_EQ(first[2], second[2]) << "what is predicted does not follow what was read";
  EXPECT_GT(first[2], 0.0);
  EXPECT_LT(first[2], 2.0) << "a bulge presses with less than its gauge";
  EXPECT_NE(one.said().find("16 cells: read 1.0 kPa"), std::string::npos) << one.out;
  EXPECT_NE(one.said().find("invented for a test"), std::string::npos) << one.out;
  EXPECT_NE(one.said().find("not a medical device"), std::string::npos) << one.out;
  EXPECT_FALSE(bytes("one/comparison.png").empty());
}

TEST_F(BenchCommands, RefuseAMapOfAnotherLayoutOrOffTheDevice) {
  ASSERT_EQ(sheet().code, kExitDone);
  const Answer other = compare("other", grid("layout_hash,0123456789abcdef\n", "1.0"));
  EXPECT_EQ(other.code, kExitBadInput);
  EXPECT_NE(other.err.find("not a map of this layout"), std::string::npos) << other.err;
  const Answer beside = compare("beside", grid(layout_hash(), "1.0", 600.0));
  EXPECT_EQ(beside.code, kExitBadInput);
  EXPECT_NE(beside.err.find("of its cells lie on the device"), std::string::npos) << beside.err;
  const Answer negative = compare("negative", grid(layout_hash(), "-1.0"));
  EXPECT_EQ(negative.code, kExitBadInput);
  EXPECT_NE(negative.err.find("a pressure of 0 or more"), std::string::npos) << negative.err;
}

}  // namespace
}  // namespace wrapgauge
