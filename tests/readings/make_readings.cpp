// Invented readings of a device that differs from its plan by known factors: make_readings PLAN SHEET.csv OUT
// SKIN OUTER CONTACT, where SHEET.csv comes from `wrapgauge bench sheet` and the factors are those of the
// skin sheet's law, the outer sheet's law, and of what sensors read over what is predicted.
#include <cmath>
#include <cstdlib>
#include <iostream>

#include "app/job/job.hpp"
#include "model/bench/bench_model.hpp"
#include "model/bench/readings_sheet.hpp"
#include "model/core/file.hpp"
#include "model/core/number_text.hpp"
#include "tests/bench_readings/bench_rows.hpp"

namespace wrapgauge {
namespace {

constexpr double kErrors[] = {0.03, 0.05, 0.04, 0.05, 0.08, 0.05, 0.10, 0.20};
constexpr const char* kInstruments[] = {"kitchen scale and ruler",
                                        "syringe and gauge",
                                        "height gauge",
                                        "kitchen scale",
                                        "thin sensor",
                                        "spring scale",
                                        "kitchen scale",
                                        ""};
constexpr double kPeelHolds_n = 2.4;  // a strip 10 mm wide

template <class T>
T or_end(Result<T> result) {
  if (result) return std::move(result).value();
  std::cerr << result.problem().message << "\n";
  std::exit(2);
}

ReadingsSheet with_block(ReadingsSheet sheet, const Layout& layout) {
  sheet = or_end(sheet.with_key("date", "2026-11-30", layout));
  sheet = or_end(sheet.with_key("remark", "Invented for the demo: nobody read this from a device.", layout));
  for (int k = 0; k + 1 < kReadingKinds; ++k) {
    const std::string kind(kind_name(static_cast<ReadingKind>(k)));
    sheet = or_end(sheet.with_key("instrument " + kind, kInstruments[k], layout));
    sheet = or_end(sheet.with_key("error_percent " + kind, number_text(100.0 * kErrors[k]), layout));
  }
  return sheet;
}

int make(char** words) {
  const Job job = or_end(read_job(words[1]));
  const Layout& layout = job.plan.layout;
  const std::string bytes = or_end(read_file(words[2]));
  ReadingsSheet sheet = with_block(or_end(ReadingsSheet::of(bytes, "readings.csv", layout)), layout);
  const std::vector<Reading> rows = sheet.readings().rows;
  Progress& quiet = silent_progress();
  BenchModel model = or_end(BenchModel::make({job.plan, job.body, job.resources}, rows, quiet));
  SheetFactors truth;
  truth.skin_law = std::atof(words[4]);
  truth.outer_law = std::atof(words[5]);
  const Eigen::VectorXd logs = or_end(model.log_predictions(truth, quiet));
  RandomStream stream(3);
  for (std::size_t row = 0, k = 0; row < rows.size(); ++row) {
    const bool fitted = k < model.fitted_rows().size() && model.fitted_rows()[k] == row;
    double si = fitted ? std::exp(logs(static_cast<Eigen::Index>(k))) : kPeelHolds_n;
    k += fitted;
    if (rows[row].kind == ReadingKind::kContact) si *= std::atof(words[6]);
    si *= std::exp(kErrors[static_cast<int>(rows[row].kind)] * bench::normal_draw(stream));
    sheet = or_end(sheet.with_read(row, number_text(field_value(read_field(rows[row].kind), si), 4), layout));
  }
  or_end(write_file_atomically(words[3], sheet.bytes()));
  return 0;
}

}  // namespace
}  // namespace wrapgauge

int main(int count, char** words) {
  if (count != 7) {
    std::cerr << "usage: make_readings PLAN SHEET OUT SKIN OUTER CONTACT\n";
    return 2;
  }
  return wrapgauge::make(words);
}
