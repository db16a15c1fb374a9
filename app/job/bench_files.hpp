#pragma once
// The files that the bench leaves behind. Same answers, same bytes.

#include "app/job/result_folder.hpp"
#include "model/bench/bench_sheet.hpp"
#include "model/bench/calibrate.hpp"
#include "model/bench/sensor_map.hpp"

namespace wrapgauge {

inline constexpr const char* kReadingsName = "readings.csv";
inline constexpr const char* kCalibrationName = "calibration.json";

// sheet.pdf and readings.csv, with the rows to type into.
Result<ResultPart> make_sheet_files(const BenchSheet& sheet, const Plan& plan, const Body& body);

// calibration.json, fit.pdf, agreement.png, residuals.png and fitted.csv.
Result<ResultPart> make_fit_files(const BenchResult& result, const std::string& plan);

// comparison.png, read beside predicted with the difference, and comparison.csv, a row a chamber.
Result<ResultPart> make_comparison_files(const Layout& layout, const SensorMap& map,
                                         const MapComparison& comparison);

// Readings that were typed into the folder's readings.csv must not be written over. Problem: it is there, and
// not as `wrapgauge bench sheet` wrote it.
Result<std::monostate> leave_readings(const std::filesystem::path& folder);

// A readings file as `folder`'s calibration.json names it.
std::string readings_beside(const std::filesystem::path& folder, const std::filesystem::path& readings);

}  // namespace wrapgauge
