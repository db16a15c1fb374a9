#include "app/job/csv_table.hpp"

#include <algorithm>
#include <optional>

#include "model/core/clean_text.hpp"
#include "model/core/file.hpp"

namespace wrapgauge {
namespace {

std::string trimmed(const std::string& text) {
  const auto from = text.find_first_not_of(" \t\r");
  if (from == std::string::npos) return "";
  return text.substr(from, text.find_last_not_of(" \t\r") - from + 1);
}

// Reads one row after another; a quoted cell may hold commas, line ends and doubled quotes.
class CsvReader {
 public:
  explicit CsvReader(const std::string& bytes) : bytes_(bytes) {
    if (bytes_.starts_with("\xEF\xBB\xBF")) at_ = 3;
  }
  bool at_end() const { return at_ >= bytes_.size(); }
  bool quote_open() const { return quote_open_; }

  CsvTable::Row next() {
    CsvTable::Row row{line_, {}};
    std::string cell;
    bool quoted = false;
    for (; !at_end(); ++at_) {
      const char c = bytes_[at_];
      if (c == '\n') ++line_;
      if (quoted) {
        if (c != '"')
          cell += c;
        else if (at_ + 1 < bytes_.size() && bytes_[at_ + 1] == '"')
          cell += bytes_[++at_];
        else
          quoted = false;
      } else if (c == '"' && trimmed(cell).empty()) {
        cell.clear();
        quoted = true;
      } else if (c == ',') {
        row.cells.push_back(trimmed(cell));
        cell.clear();
      } else if (c == '\n') {
        ++at_;
        break;
      } else {
        cell += c;
      }
    }
    quote_open_ = quoted;
    row.cells.push_back(trimmed(cell));
    return row;
  }

 private:
  const std::string& bytes_;
  std::size_t at_ = 0;
  int line_ = 1;
  bool quote_open_ = false;
};

bool is_empty(const CsvTable::Row& row) {
  return row.cells.size() == 1 && row.cells.front().empty();
}

std::optional<Problem> heading_problem(const std::string& name, const std::vector<std::string>& heading) {
  if (heading.size() == 1)
    for (const char separator : {';', '\t'})
      if (heading.front().find(separator) != std::string::npos)
        return bad_input(name + " separates its columns with " + (separator == ';' ? "semicolons" : "tabs") +
                         ": save it with commas.");
  for (std::size_t column = 0; column < heading.size(); ++column) {
    if (heading[column].empty())
      return bad_input("Column " + std::to_string(column + 1) + " of " + name + " has no heading: name it.");
    if (std::count(heading.begin(), heading.end(), heading[column]) > 1)
      return bad_input(name + " has the column '" + clean_text(heading[column]) + "' twice: keep one.");
  }
  return std::nullopt;
}

Problem length_problem(const std::string& name, const CsvTable::Row& row, std::size_t wanted) {
  return bad_input("Line " + std::to_string(row.line) + " of " + name + " has " +
                   std::to_string(row.cells.size()) + " cells and its heading " + std::to_string(wanted) +
                   ": " +
                   (row.cells.size() > wanted ? "write decimals with a point (27.5), or put quotes round a "
                                                "cell that holds a comma."
                                              : "fill in every column."));
}

}  // namespace

Result<CsvTable> read_csv(const std::filesystem::path& file, int most_rows) {
  const auto bytes = read_file(file);
  if (!bytes) return bytes.problem();
  const std::string name = clean_text(file.filename().string());
  if (bytes->find('\0') != std::string::npos)
    return bad_input(name +
                     " holds the character NUL, so it is no CSV text: save it as UTF-8 text with commas.");
  CsvReader reader(*bytes);
  CsvTable table;
  while (!reader.at_end()) {
    CsvTable::Row row = reader.next();
    if (reader.quote_open())
      return bad_input("A quote that begins in line " + std::to_string(row.line) + " of " + name +
                       " never ends: close it.");
    if (is_empty(row)) continue;
    if (table.heading.empty()) {
      table.heading = std::move(row.cells);
      if (auto problem = heading_problem(name, table.heading)) return *problem;
      continue;
    }
    if (row.cells.size() != table.heading.size()) return length_problem(name, row, table.heading.size());
    if (static_cast<int>(table.rows.size()) == most_rows)
      return bad_input(name + " has more than " + std::to_string(most_rows) +
                       " rows, which one study does not take: split the list.");
    table.rows.push_back(std::move(row));
  }
  if (table.rows.empty()) return bad_input(name + " lists nobody: write a heading and a row each.");
  return table;
}

}  // namespace wrapgauge
