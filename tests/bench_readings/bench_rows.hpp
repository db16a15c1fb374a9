#pragma once
// Rows of readings made in a test.

#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "model/bench/bench_fit.hpp"
#include "model/bench/bench_model.hpp"
#include "model/study/random_stream.hpp"
#include "tests/study/small_band.hpp"

namespace wrapgauge::bench {

using F = ReadingField;

inline Reading row(ReadingKind kind, const std::string& where,
                   const std::vector<std::pair<ReadingField, double>>& values, double error = 0.05) {
  Reading reading;
  reading.kind = kind;
  reading.where = where;
  reading.error = error;
  for (const auto& [field, si] : values) reading.si[static_cast<std::size_t>(field)] = si;
  return reading;
}

inline Reading strip(SheetSide sheet, double stretch, double error = 0.03) {
  Reading reading = row(
      ReadingKind::kStrip, "",
      {{F::kWidth, 0.010}, {F::kThickness, 0.0015}, {F::kLength, 0.050}, {F::kStretched, 0.050 * stretch}},
      error);
  reading.sheet = sheet;
  return reading;
}

// What an afternoon gives on the small band: strips, fills, bulges, plates and contact.
inline std::vector<Reading> afternoon(double error) {
  std::vector<Reading> rows;
  for (const double stretch : {1.2, 1.5, 2.0})
    for (const SheetSide sheet : {SheetSide::kSkin, SheetSide::kOuter})
      rows.push_back(strip(sheet, stretch, error));
  for (const double ml : {3.0, 5.0, 7.0})
    rows.push_back(row(ReadingKind::kFill, "valve", {{F::kFilled, ml * 1e-6}}, error));
  for (const double kpa : {0.5, 1.0})
    rows.push_back(row(ReadingKind::kBulge, "pad", {{F::kGauge, kpa * 1e3}}, error));
  for (const double kpa : {1.0, 2.0, 3.0})
    rows.push_back(row(ReadingKind::kPlate, "pad", {{F::kGauge, kpa * 1e3}, {F::kGap, 0.008}}, error));
  for (const double kpa : {1.0, 1.5, 2.0, 2.5, 3.0})
    rows.push_back(row(ReadingKind::kContact, "pad",
                       {{F::kGauge, kpa * 1e3}, {F::kSensorArea, 1e-4}, {F::kSensorThickness, 2e-4}}, error));
  rows.push_back(row(ReadingKind::kClosure, "", {{F::kFastened, 0.257}}, error));
  for (std::size_t k = 0; k < rows.size(); ++k) {
    rows[k].id = std::string(kind_name(rows[k].kind)) + " " + std::to_string(k + 1);
    rows[k].line = static_cast<int>(k) + 8;
  }
  return rows;
}

inline BenchJob job() {
  static const Plan plan = small_band::plan(2.0 * kPa);
  static const Body body = small_band::body();
  static const Resources resources = small_band::resources();
  return {plan, body, resources, 14.0 * mm};
}

// Sum of twelve even draws: normal enough within three standard deviations.
inline double normal_draw(RandomStream& stream) {
  double sum = -6.0;
  for (int k = 0; k < 12; ++k) sum += stream.unit();
  return sum;
}

// Readings as `log_true` with noise of the rows' own error.
inline void read(std::vector<Reading>& rows, const std::vector<std::size_t>& fitted,
                 const Eigen::VectorXd& log_true, double noise, RandomStream& stream) {
  for (std::size_t k = 0; k < fitted.size(); ++k) {
    Reading& one = rows[fitted[k]];
    one.si[static_cast<std::size_t>(read_field(one.kind))] =
        std::exp(log_true(static_cast<Eigen::Index>(k)) + noise * one.error * normal_draw(stream));
  }
}

inline std::vector<double> nominal_of(const BenchModel& model) {
  std::vector<double> values;
  for (const std::size_t row : model.fitted_rows()) values.push_back(*model.nominal()[row]);
  return values;
}

inline LogResponse response_of(BenchModel& model) {
  return with_differences(
      [&](const Eigen::VectorXd& p) { return model.log_predictions(factors_of(p), silent_progress()); },
      [&] { model.go_on_from_last(); }, std::vector<bool>(kFitParameters, true));
}

}  // namespace wrapgauge::bench
