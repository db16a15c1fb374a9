#pragma once
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

// A CSV file with a heading (RFC 4180): cells without the blanks around them, every row as long as the
// heading. Before the heading there may be a block of rows of any length.
struct CsvTable {
  struct Row {
    int line = 0;  // in the file, from 1
    std::vector<std::string> cells;
  };
  std::vector<Row> block;  // before the heading, none empty
  std::vector<std::string> heading;
  int heading_line = 0;
  std::vector<Row> rows;
};

struct CsvForm {
  int most_rows = 0;
  const char* rows_are = "rows";  // for people: "persons"
  std::string heading_begins;     // its first cell; empty: the first row is the heading and no block is there
};

// Empty lines are passed over. Problems: no such file, no heading, a heading with semicolons or tabs for
// commas, a column twice, a row of another length (with its line), a quote that does not end, more than
// `most_rows`, no rows at all.
Result<CsvTable> read_csv(const std::filesystem::path& file, const CsvForm& form);
// The same of bytes at hand; `name` is the file's, for people.
Result<CsvTable> csv_of(const std::string& bytes, const std::string& name, const CsvForm& form);

// As csv_of reads it again: block, heading, rows; quotes where a cell asks for them.
std::string csv_text(const CsvTable& table);

// A cell that is a number and nothing else, with a point for its decimals.
std::optional<double> number_in_cell(const std::string& cell);

}  // namespace wrapgauge
