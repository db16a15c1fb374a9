#include "model/bench/reading.hpp"

#include "model/bench/reading_columns.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

struct KindRow {
  const char* name;
  double error;
  std::vector<ReadingField> needed;
};

const std::array<KindRow, kReadingKinds>& kinds() {
  using F = ReadingField;
  static const std::array<KindRow, kReadingKinds> rows = {{
      {"strip", 0.03, {F::kWidth, F::kThickness, F::kLength, F::kStretched, F::kMass}},
      {"fill", 0.05, {F::kFilled, F::kGauge}},
      {"bulge", 0.05, {F::kGauge, F::kHeight}},
      {"plate", 0.05, {F::kGauge, F::kGap, F::kMass}},
      {"contact", 0.15, {F::kGauge, F::kSensorArea, F::kSensor}},
      {"closure", 0.05, {F::kFastened, F::kPull}},
      {"peel", 0.10, {F::kWidth, F::kMass}},
      {"map", 0.20, {F::kGauge}},
  }};
  return rows;
}

const KindRow& row_of(ReadingKind kind) {
  return kinds()[static_cast<std::size_t>(kind)];
}

// The first that gives the field.
const ReadingColumn& column_of(ReadingField field) {
  for (const ReadingColumn& column : reading_columns())
    if (column.field == field) return column;
  return reading_columns().front();
}

// Never with an exponent.
std::string three_digits(double value) {
  return value < 10.0 ? fixed_text(value, 2) : fixed_text(value, value < 100.0 ? 1 : 0);
}

}  // namespace

std::string_view kind_name(ReadingKind kind) {
  return row_of(kind).name;
}

std::optional<ReadingKind> kind_from_name(std::string_view name) {
  for (int k = 0; k < kReadingKinds; ++k)
    if (name == kinds()[static_cast<std::size_t>(k)].name) return static_cast<ReadingKind>(k);
  return std::nullopt;
}

double default_error(ReadingKind kind) {
  return row_of(kind).error;
}

const std::vector<ReadingField>& needed_fields(ReadingKind kind) {
  return row_of(kind).needed;
}

ReadingField read_field(ReadingKind kind) {
  return row_of(kind).needed.back();
}

double read_si(const Reading& reading) {
  return reading.value(read_field(reading.kind));
}

double field_value(ReadingField field, double si) {
  return si / column_of(field).si;
}

const char* field_unit(ReadingField field) {
  return column_of(field).unit;
}

std::string field_text(ReadingField field, double si) {
  const double value = field_value(field, si);
  const std::string unit = std::string(" ") + field_unit(field);
  switch (field) {
    case ReadingField::kGauge:
    case ReadingField::kSensor:
      return fixed_text(value, value < 1.0 ? 3 : 2) + unit + " (" +
             fixed_text(Pressure(si) / mmHg, value < 1.0 ? 2 : 1) + " mmHg)";
    case ReadingField::kFilled:
      return fixed_text(value, 1) + unit;
    case ReadingField::kMass:
      return three_digits(value) + unit;
    case ReadingField::kPull:
    case ReadingField::kSensorArea:
    case ReadingField::kAfter:
      return number_text(value, 3) + unit;
    default:
      return fixed_text(value, 1) + unit;
  }
}

bool Reading::is_read() const {
  return has(read_field(kind));
}

std::string read_text(const Reading& reading, double si) {
  return field_text(read_field(reading.kind), si);
}

}  // namespace wrapgauge
