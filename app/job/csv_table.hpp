#pragma once
#include <filesystem>
#include <string>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

// A CSV file with a heading (RFC 4180): cells without the blanks around them, every row as long as the
// heading.
struct CsvTable {
  struct Row {
    int line = 0;  // in the file, from 1
    std::vector<std::string> cells;
  };
  std::vector<std::string> heading;
  std::vector<Row> rows;
};

// Empty lines are passed over. Problems: no such file, no heading, a heading with semicolons or tabs for
// commas, a column twice, a row of another length (with its line), a quote that does not end, more than
// `most_rows`.
Result<CsvTable> read_csv(const std::filesystem::path& file, int most_rows);

}  // namespace wrapgauge
