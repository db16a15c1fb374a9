#include "model/bench/readings_sheet.hpp"

#include <algorithm>

#include "model/core/clean_text.hpp"

namespace wrapgauge {
namespace {

std::optional<std::size_t> place_in(const std::vector<std::string>& heading, const std::string& name) {
  const auto at = std::find(heading.begin(), heading.end(), name);
  if (at == heading.end()) return std::nullopt;
  return static_cast<std::size_t>(at - heading.begin());
}

std::size_t place_or_new(CsvTable& table, const std::string& name) {
  if (const auto at = place_in(table.heading, name)) return *at;
  table.heading.push_back(name);
  for (CsvTable::Row& row : table.rows) row.cells.emplace_back();
  return table.heading.size() - 1;
}

// As people type it on either side of a border.
std::string with_point(std::string typed) {
  std::erase(typed, ' ');
  if (typed.find('.') == std::string::npos) std::replace(typed.begin(), typed.end(), ',', '.');
  return typed;
}

}  // namespace

Result<ReadingsSheet> ReadingsSheet::of(const std::string& bytes, const std::string& name,
                                        const Layout& layout) {
  auto table = csv_of(bytes, name, kReadingsForm);
  if (!table) return table.problem();
  auto readings = readings_of(*table, bytes, name, layout, UnreadRows::kKept);
  if (!readings) return readings.problem();
  return ReadingsSheet(bytes, std::move(table).value(), std::move(readings).value());
}

Result<ReadingsSheet> ReadingsSheet::with_table(const CsvTable& table, const Layout& layout) const {
  return of(csv_text(table), readings_.file, layout);
}

// The column that holds the value; of an unread row, the first of the table that could.
const ReadingColumn& ReadingsSheet::read_column(std::size_t row) const {
  const ReadingField field = read_field(readings_.rows[row].kind);
  const ReadingColumn* first = nullptr;
  for (const ReadingColumn& column : reading_columns()) {
    if (column.field != field) continue;
    const auto at = place_in(table_.heading, column.name);
    if (at && !table_.rows[row].cells[*at].empty()) return column;
    if (!first || (at && !place_in(table_.heading, first->name))) first = &column;
  }
  return *first;
}

std::string ReadingsSheet::read_unit(std::size_t row) const {
  return read_column(row).unit;
}

std::optional<double> ReadingsSheet::read_value(std::size_t row) const {
  const Reading& reading = readings_.rows[row];
  if (!reading.is_read()) return std::nullopt;
  return read_si(reading) / read_column(row).si;
}

std::optional<double> ReadingsSheet::predicted_value(std::size_t row) const {
  const auto& predicted = readings_.rows[row].predicted;
  if (!predicted) return std::nullopt;
  return *predicted / read_column(row).si;
}

Result<ReadingsSheet> ReadingsSheet::with_read(std::size_t row, const std::string& typed,
                                               const Layout& layout) const {
  CsvTable table = table_;
  const std::size_t column = place_or_new(table, read_column(row).name);
  table.rows[row].cells[column] = with_point(typed);
  return with_table(table, layout);
}

Result<ReadingsSheet> ReadingsSheet::with_confirmed(std::size_t row, bool confirmed,
                                                    const Layout& layout) const {
  CsvTable table = table_;
  const std::size_t column = place_or_new(table, "confirmed");
  table.rows[row].cells[column] = confirmed ? "yes" : "";
  return with_table(table, layout);
}

std::string ReadingsSheet::key_value(const std::string& key) const {
  for (const CsvTable::Row& row : table_.block)
    if (row.cells.front() == key) return row.cells.size() > 1 ? row.cells[1] : "";
  return "";
}

Result<ReadingsSheet> ReadingsSheet::with_key(const std::string& key, const std::string& value,
                                              const Layout& layout) const {
  CsvTable table = table_;
  auto at = std::find_if(table.block.begin(), table.block.end(),
                         [&](const CsvTable::Row& row) { return row.cells.front() == key; });
  if (at == table.block.end()) at = table.block.insert(at, CsvTable::Row{0, {key}});
  at->cells = {key, clean_text(value)};
  return with_table(table, layout);
}

}  // namespace wrapgauge
