#pragma once
// A grid of sensors laid between skin and device, read at one gauge, held against the prediction.

#include <Eigen/Core>
#include <filesystem>
#include <string>
#include <vector>

#include "model/bench/bench_model.hpp"

namespace wrapgauge {

struct SensorMap {
  std::string file, remark;
  Vec2 low_left_m = Vec2::Zero(), low_right_m = Vec2::Zero(), up_left_m = Vec2::Zero();  // on the layout
  Pressure gauge;                                                                        // of every inlet
  Eigen::MatrixXd pressure_pa;  // first row: the upper one

  Vec2 middle_m(Eigen::Index row, Eigen::Index column) const;  // of a cell
  Area cell() const;
};

// A CSV file: a block with layout_hash, gauge_kpa or gauge_mmhg, unit (kpa or mmhg), remark and the corners
// low_left_x_mm, low_left_y_mm and so on; then a table whose heading begins with `row`, a cell each.
// Problems: those of read_csv, a key that is missing or unknown, another layout, a negative value, corners in
// a line.
Result<SensorMap> read_sensor_map(const std::filesystem::path& file, const Layout& layout);

struct MapChamber {
  std::string chamber;
  int cells = 0;
  Pressure read, predicted;  // means
};

struct MapComparison {
  Eigen::MatrixXd predicted_pa;  // as the map; -1 where the device does not lie
  int cells = 0;                 // compared
  double correlation = 0.0;
  Pressure bias;                         // read less predicted, mean
  Pressure worst_read, worst_predicted;  // over 1 cm2
  std::vector<MapChamber> chambers;
};

// Solved on the plan's mesh with every inlet at the map's gauge. Problems: those of prepare() and inflate();
// a gauge beyond the limit point; fewer than 4 cells on the device.
Result<MapComparison> compare_map(const BenchJob& job, const SensorMap& map, Progress& progress);

std::vector<std::string> comparison_words(const SensorMap& map, const MapComparison& comparison);

}  // namespace wrapgauge
