#pragma once
// A readings file that is typed into: what stands in it stays as it is, but for the cells that are changed.

#include "model/bench/reading_columns.hpp"
#include "model/bench/readings_file.hpp"

namespace wrapgauge {

class ReadingsSheet {
 public:
  // Rows may be unread. Problems: those of read_readings.
  static Result<ReadingsSheet> of(const std::string& bytes, const std::string& name, const Layout& layout);

  const Readings& readings() const { return readings_; }
  const std::string& bytes() const { return bytes_; }

  // The value that was read of a row, as typed, with a point or a comma for its decimals; empty: not read.
  // Problems: those of read_readings, without line or file where the cell itself is wrong.
  Result<ReadingsSheet> with_read(std::size_t row, const std::string& typed, const Layout& layout) const;
  // Whether it was looked at again, so that it is not asked about.
  Result<ReadingsSheet> with_confirmed(std::size_t row, bool confirmed, const Layout& layout) const;
  // The unit that the value of a row is typed in: that of its column.
  std::string read_unit(std::size_t row) const;
  // The value of a row in that unit; none: not read, or not predicted.
  std::optional<double> read_value(std::size_t row) const;
  std::optional<double> predicted_value(std::size_t row) const;

  // A row of the block before the table, such as "error_percent fill"; empty: as if it were not said.
  Result<ReadingsSheet> with_key(const std::string& key, const std::string& value,
                                 const Layout& layout) const;
  std::string key_value(const std::string& key) const;

 private:
  ReadingsSheet(std::string bytes, CsvTable table, Readings readings)
      : bytes_(std::move(bytes)), table_(std::move(table)), readings_(std::move(readings)) {}
  const ReadingColumn& read_column(std::size_t row) const;
  Result<ReadingsSheet> with_table(const CsvTable& table, const Layout& layout) const;

  std::string bytes_;
  CsvTable table_;
  Readings readings_;
};

}  // namespace wrapgauge
