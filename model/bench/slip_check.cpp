#include "model/bench/slip_check.hpp"

#include <cmath>

#include "model/core/number_text.hpp"
#include "model/study/percentile.hpp"

namespace wrapgauge {
namespace {

constexpr double kFar = 4.5;       // beyond any factor that is fitted from a middle one
constexpr double kUnit = 7.50062;  // mmHg in a kPa
constexpr double kBetween = 8.66;  // nearer to ten than to the unit

bool is_pressure(ReadingField field) {
  return field == ReadingField::kGauge || field == ReadingField::kSensor;
}

Phrase question(const Reading& reading, double times) {
  const double size = std::max(times, 1.0 / times);
  if (is_pressure(read_field(reading.kind)) && size < kBetween && size > 0.6 * kUnit)
    return times > 1.0 ? Phrase::worded("Is it mmHg, typed in the column for kPa?")
                       : Phrase::worded("Is it kPa, typed in the column for mmHg?");
  if (size > 7.0 && size < 14.0) return Phrase::worded("Is the decimal point in its place?");
  return Phrase::worded("Was something else read?");
}

Problem asked(const Readings& readings, const Reading& row, double predicted, double times) {
  const std::vector<Phrase> values = {name_of(readings.file),
                                      figures_of(row.line),
                                      name_of(row.id),
                                      figures_of(read_text(row, read_si(row))),
                                      figures_of(number_text(std::max(times, 1.0 / times), 2)),
                                      figures_of(read_text(row, predicted)),
                                      question(row, times)};
  return bad_input(
      times > 1.0
          ? Phrase::worded("%1, line %2: reading '%3', %4, is %5 times what the other readings and the "
                           "prediction of %6 let expect. %7 Correct it, or write yes in its column "
                           "'confirmed'.",
                           values)
          : Phrase::worded("%1, line %2: reading '%3', %4, is 1/%5 of what the other readings and the "
                           "prediction of %6 let expect. %7 Correct it, or write yes in its column "
                           "'confirmed'.",
                           values));
}

}  // namespace

bool is_far_off(double ratio) {
  return ratio > kFar || ratio < 1.0 / kFar;
}

std::optional<Problem> slip_of(const Readings& readings,
                               const std::vector<std::optional<double>>& predicted) {
  for (std::size_t row = 0; row < readings.rows.size(); ++row) {
    const Reading& reading = readings.rows[row];
    if (!predicted[row] || reading.confirmed) continue;
    const double own = read_si(reading) / *predicted[row];
    std::vector<double> others;
    for (std::size_t other = 0; other < readings.rows.size(); ++other)
      if (other != row && predicted[other] && readings.rows[other].kind == reading.kind)
        others.push_back(std::log(read_si(readings.rows[other]) / *predicted[other]));
    const double usual = others.size() >= 2 ? std::exp(percentile(others, 0.5)) : 1.0;
    if (is_far_off(own / usual)) return asked(readings, reading, *predicted[row], own / usual);
    if (is_far_off(own)) return asked(readings, reading, *predicted[row], own);
  }
  return std::nullopt;
}

}  // namespace wrapgauge
