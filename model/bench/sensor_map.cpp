#include "model/bench/sensor_map.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "model/bench/readings_file.hpp"
#include "model/bench/sensor_reading.hpp"
#include "model/contact/area_average.hpp"
#include "model/core/clean_text.hpp"
#include "model/core/csv_table.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/geometry/polygon.hpp"
#include "model/pipeline/prepare.hpp"

namespace wrapgauge {
namespace {

using Block = std::map<std::string, std::string>;

constexpr std::array kCornerKeys = {"low_left_x_mm",  "low_left_y_mm", "low_right_x_mm",
                                    "low_right_y_mm", "up_left_x_mm",  "up_left_y_mm"};

Problem of_map(const std::string& name, const std::string& what) {
  return bad_input(name + ": " + what);
}

Result<Block> map_block(const CsvTable& table, const std::string& name) {
  Block block;
  for (const CsvTable::Row& row : table.block) {
    const std::string& key = row.cells.front();
    const bool known = std::find(kCornerKeys.begin(), kCornerKeys.end(), key) != kCornerKeys.end() ||
                       key == "layout_hash" || key == "gauge_kpa" || key == "gauge_mmhg" || key == "unit" ||
                       key == "remark";
    if (!known)
      return of_map(name, "line " + std::to_string(row.line) + ", '" + clean_text(key) + "' is no key here.");
    block[key] = row.cells.size() > 1 ? row.cells[1] : "";
  }
  return block;
}

std::optional<double> number_of(const Block& block, const char* key) {
  const auto at = block.find(key);
  return at == block.end() ? std::nullopt : number_in_cell(at->second);
}

std::optional<Problem> take_corners(const Block& block, SensorMap& map) {
  std::array<double, kCornerKeys.size()> mm_of{};
  for (std::size_t k = 0; k < kCornerKeys.size(); ++k) {
    const auto value = number_of(block, kCornerKeys[k]);
    if (!value)
      return of_map(map.file, std::string(kCornerKeys[k]) +
                                  " is missing or no number: give three corners of "
                                  "the grid on the layout.");
    mm_of[k] = *value;
  }
  map.low_left_m = 1e-3 * Vec2(mm_of[0], mm_of[1]);
  map.low_right_m = 1e-3 * Vec2(mm_of[2], mm_of[3]);
  map.up_left_m = 1e-3 * Vec2(mm_of[4], mm_of[5]);
  const Vec2 u = map.low_right_m - map.low_left_m, v = map.up_left_m - map.low_left_m;
  if (std::abs(u.x() * v.y() - u.y() * v.x()) < 1e-6)
    return of_map(map.file, "its three corners lie in a line: give low left, low right and up left.");
  return std::nullopt;
}

std::optional<Problem> take_gauge(const Block& block, SensorMap& map) {
  const auto kpa = number_of(block, "gauge_kpa"), mmhg = number_of(block, "gauge_mmhg");
  if (kpa.has_value() == mmhg.has_value())
    return of_map(map.file, "give gauge_kpa or gauge_mmhg, one of them.");
  map.gauge = kpa ? *kpa * kPa : *mmhg * mmHg;
  if (map.gauge > Pressure()) return std::nullopt;
  return of_map(map.file, "the gauge is " + pressure_text(map.gauge) + ": it lies above 0.");
}

std::optional<Problem> take_cells(const CsvTable& table, const Block& block, SensorMap& map) {
  const auto unit = block.find("unit");
  if (unit == block.end() || (unit->second != "kpa" && unit->second != "mmhg"))
    return of_map(map.file, "it does not say the unit of its cells: add a row 'unit,kpa' or 'unit,mmhg'.");
  const double si = unit->second == "kpa" ? 1e3 : mmHg.si();
  const auto columns = static_cast<Eigen::Index>(table.heading.size()) - 1;
  map.pressure_pa.resize(static_cast<Eigen::Index>(table.rows.size()), columns);
  for (std::size_t r = 0; r < table.rows.size(); ++r)
    for (Eigen::Index c = 0; c < columns; ++c) {
      const std::string& cell = table.rows[r].cells[static_cast<std::size_t>(c) + 1];
      const auto value = number_in_cell(cell);
      if (!value || !(*value >= 0.0) || !std::isfinite(*value))
        return of_map(map.file, "line " + std::to_string(table.rows[r].line) + ", column " +
                                    std::to_string(c + 2) + " is '" + clean_text(cell) +
                                    "': write a pressure of 0 or more.");
      map.pressure_pa(static_cast<Eigen::Index>(r), c) = *value * si;
    }
  return std::nullopt;
}

// Highest mean over 1 cm2 round a cell's middle, of the cells that are compared.
Pressure worst_of(const SensorMap& map, const Eigen::MatrixXd& compared, const Eigen::MatrixXd& values) {
  double worst = 0.0;
  for (Eigen::Index r = 0; r < values.rows(); ++r)
    for (Eigen::Index c = 0; c < values.cols(); ++c) {
      double sum = 0.0;
      int count = 0;
      for (Eigen::Index i = 0; i < values.rows(); ++i)
        for (Eigen::Index j = 0; j < values.cols(); ++j)
          if (compared(i, j) >= 0.0 &&
              (map.middle_m(i, j) - map.middle_m(r, c)).norm() <= kSquareCentimetreRadius_m)
            sum += values(i, j), ++count;
      if (count > 0) worst = std::max(worst, sum / count);
    }
  return Pressure(worst);
}

void add_chambers(const Layout& layout, const SensorMap& map, MapComparison& out) {
  for (const Chamber& chamber : layout.chambers) {
    MapChamber one{chamber.name, 0, {}, {}};
    for (Eigen::Index r = 0; r < map.pressure_pa.rows(); ++r)
      for (Eigen::Index c = 0; c < map.pressure_pa.cols(); ++c) {
        if (out.predicted_pa(r, c) < 0.0 || !contains(chamber.boundary_m, map.middle_m(r, c))) continue;
        one.read = one.read + Pressure(map.pressure_pa(r, c));
        one.predicted = one.predicted + Pressure(out.predicted_pa(r, c));
        ++one.cells;
      }
    if (one.cells == 0) continue;
    one.read = one.read / one.cells;
    one.predicted = one.predicted / one.cells;
    out.chambers.push_back(one);
  }
}

void add_figures(const SensorMap& map, MapComparison& out) {
  std::vector<double> read, predicted;
  for (Eigen::Index r = 0; r < map.pressure_pa.rows(); ++r)
    for (Eigen::Index c = 0; c < map.pressure_pa.cols(); ++c)
      if (out.predicted_pa(r, c) >= 0.0)
        read.push_back(map.pressure_pa(r, c)), predicted.push_back(out.predicted_pa(r, c));
  out.cells = static_cast<int>(read.size());
  const Eigen::Map<Eigen::ArrayXd> a(read.data(), out.cells), b(predicted.data(), out.cells);
  out.bias = Pressure((a - b).mean());
  const double spread = std::sqrt((a - a.mean()).square().sum() * (b - b.mean()).square().sum());
  out.correlation = spread > 0.0 ? ((a - a.mean()) * (b - b.mean())).sum() / spread : 0.0;
  out.worst_read = worst_of(map, out.predicted_pa, map.pressure_pa);
  out.worst_predicted = worst_of(map, out.predicted_pa, out.predicted_pa);
}

}  // namespace

Vec2 SensorMap::middle_m(Eigen::Index row, Eigen::Index column) const {
  const double u = (static_cast<double>(column) + 0.5) / static_cast<double>(pressure_pa.cols());
  const double v = 1.0 - (static_cast<double>(row) + 0.5) / static_cast<double>(pressure_pa.rows());
  return low_left_m + u * (low_right_m - low_left_m) + v * (up_left_m - low_left_m);
}

Area SensorMap::cell() const {
  const Vec2 u = low_right_m - low_left_m, v = up_left_m - low_left_m;
  return Area(std::abs(u.x() * v.y() - u.y() * v.x()) / static_cast<double>(pressure_pa.size()));
}

Result<SensorMap> read_sensor_map(const std::filesystem::path& file, const Layout& layout) {
  const auto table = read_csv(file, {kMostReadings, "rows", "row"});
  if (!table) return table.problem();
  SensorMap map;
  map.file = clean_text(file.filename().string());
  const auto block = map_block(*table, map.file);
  if (!block) return block.problem();
  const auto hash = block->find("layout_hash");
  if (hash == block->end() || hash->second != layout_hash(layout))
    return of_map(map.file,
                  "it is not a map of this layout, whose layout_hash is " + layout_hash(layout) + ".");
  if (const auto remark = block->find("remark"); remark != block->end())
    map.remark = clean_text(remark->second);
  if (auto problem = take_corners(*block, map)) return *problem;
  if (auto problem = take_gauge(*block, map)) return *problem;
  if (auto problem = take_cells(*table, *block, map)) return *problem;
  return map;
}

Result<MapComparison> compare_map(const BenchJob& job, const SensorMap& map, Progress& progress) {
  const auto prepared = prepare(job.plan, job.body, job.resources, mesh_of_plan(job.plan));
  if (!prepared) return prepared.problem();
  const InflationSetup& setup = prepared->setup;
  const std::vector<InflationTarget> targets(setup.flat.group_inlet.size(), InflationTarget(map.gauge));
  const auto path = inflate(setup, targets, job.plan.solver, progress);
  if (!path) return path.problem();
  if (path->limit_point)
    return of_map(map.file, "its gauge of " + pressure_text(map.gauge) + " lies beyond the limit point, " +
                                pressure_text(path->limit_point->pressure) + ".");
  MapComparison out;
  out.predicted_pa = Eigen::MatrixXd::Constant(map.pressure_pa.rows(), map.pressure_pa.cols(), -1.0);
  int on_device = 0;
  for (Eigen::Index r = 0; r < map.pressure_pa.rows(); ++r)
    for (Eigen::Index c = 0; c < map.pressure_pa.cols(); ++c)
      if (const auto mean =
              sensor_mean(setup, *path, path->states.back(), {map.middle_m(r, c), map.cell(), {}})) {
        out.predicted_pa(r, c) = mean->si();
        ++on_device;
      }
  if (on_device < 4)
    return of_map(map.file, "only " + std::to_string(on_device) +
                                " of its cells lie on the device: check its corners.");
  add_figures(map, out);
  add_chambers(job.plan.layout, map, out);
  return out;
}

std::vector<std::string> comparison_words(const SensorMap& map, const MapComparison& comparison) {
  std::vector<std::string> words;
  words.push_back("Read less predicted, mean over " + std::to_string(comparison.cells) + " cells: " +
                  fixed_text(comparison.bias / kPa, 2) + " kPa (" + fixed_text(comparison.bias / mmHg, 1) +
                  " mmHg); correlation " + fixed_text(comparison.correlation, 2) + ".");
  words.push_back("Worst 1 cm²: read " + pressure_text(comparison.worst_read) + ", predicted " +
                  pressure_text(comparison.worst_predicted) + ".");
  for (const MapChamber& one : comparison.chambers)
    words.push_back(clean_text(one.chamber) + ", " + std::to_string(one.cells) + " cells: read " +
                    pressure_text(one.read) + ", predicted " + pressure_text(one.predicted) + ".");
  if (!map.remark.empty()) words.push_back("The map's remark: " + map.remark);
  return words;
}

}  // namespace wrapgauge
