#include "model/bench/reading_columns.hpp"

namespace wrapgauge {

const std::vector<ReadingColumn>& reading_columns() {
  using F = ReadingField;
  constexpr double kGram = 9.80665e-3;  // N; standard gravity of ISO 80000-3, from memory
  static const std::vector<ReadingColumn> columns = {
      {"gauge_kpa", F::kGauge, "kPa", 1e3, false},
      {"gauge_mmhg", F::kGauge, "mmHg", mmHg.si(), false},
      {"filled_ml", F::kFilled, "mL", 1e-6, false},
      {"width_mm", F::kWidth, "mm", 1e-3, false},
      {"thickness_mm", F::kThickness, "mm", 1e-3, false},
      {"length_mm", F::kLength, "mm", 1e-3, false},
      {"stretched_mm", F::kStretched, "mm", 1e-3, false},
      {"mass_g", F::kMass, "g", kGram, false},
      {"height_mm", F::kHeight, "mm", 1e-3, false},
      {"gap_mm", F::kGap, "mm", 1e-3, false},
      {"sensor_kpa", F::kSensor, "kPa", 1e3, false},
      {"sensor_mmhg", F::kSensor, "mmHg", mmHg.si(), false},
      {"sensor_area_cm2", F::kSensorArea, "cm²", 1e-4, false},
      {"sensor_area_mm2", F::kSensorArea, "mm²", 1e-6, false},
      {"sensor_thickness_mm", F::kSensorThickness, "mm", 1e-3, true},
      {"fastened_mm", F::kFastened, "mm", 1e-3, false},
      {"pull_n", F::kPull, "N", 1.0, false},
      {"pull_g", F::kPull, "g", kGram, false},
      {"after_min", F::kAfter, "min", 60.0, true},
      {"x_mm", F::kX, "mm", 1e-3, true},
      {"y_mm", F::kY, "mm", 1e-3, true}};
  return columns;
}

const ReadingColumn* column_named(const std::string& name) {
  for (const ReadingColumn& column : reading_columns())
    if (name == column.name) return &column;
  return nullptr;
}

std::string columns_of_field(ReadingField field) {
  std::string names;
  for (const ReadingColumn& column : reading_columns())
    if (column.field == field) names += (names.empty() ? "" : " or ") + std::string(column.name);
  return names;
}

}  // namespace wrapgauge
