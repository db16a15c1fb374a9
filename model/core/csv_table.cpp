#include "model/core/csv_table.hpp"

#include <algorithm>
#include <charconv>

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

// A spreadsheet writes an empty line as commas alone.
bool is_empty(const CsvTable::Row& row) {
  return std::all_of(row.cells.begin(), row.cells.end(),
                     [](const std::string& cell) { return cell.empty(); });
}

// Of a row before the heading, whose length a spreadsheet fills up to that of the table.
void drop_empty_end(std::vector<std::string>& cells) {
  while (!cells.empty() && cells.back().empty()) cells.pop_back();
}

std::optional<Problem> heading_problem(const std::string& name, const std::vector<std::string>& heading) {
  if (heading.size() == 1)
    for (const char separator : {';', '\t'})
      if (heading.front().find(separator) != std::string::npos)
        return bad_input(
            separator == ';'
                ? Phrase::worded("%1 separates its columns with semicolons: save it with commas.",
                                 {name_of(name)})
                : Phrase::worded("%1 separates its columns with tabs: save it with commas.",
                                 {name_of(name)}));
  for (std::size_t column = 0; column < heading.size(); ++column) {
    if (heading[column].empty())
      return bad_input(Phrase::worded("Column %1 of %2 has no heading: name it.",
                                      {figures_of(static_cast<int>(column) + 1), name_of(name)}));
    if (std::count(heading.begin(), heading.end(), heading[column]) > 1)
      return bad_input(Phrase::worded("%1 has the column '%2' twice: keep one.",
                                      {name_of(name), name_of(clean_text(heading[column]))}));
  }
  return std::nullopt;
}

Problem length_problem(const std::string& name, const CsvTable::Row& row, std::size_t wanted) {
  const std::vector<Phrase> values = {figures_of(row.line), name_of(name),
                                      figures_of(static_cast<int>(row.cells.size())),
                                      figures_of(static_cast<int>(wanted))};
  return bad_input(
      row.cells.size() > wanted
          ? Phrase::worded(
                "Line %1 of %2 has %3 cells and its heading %4: write decimals with a point (27.5), "
                "or put quotes round a cell that holds a comma.",
                values)
          : Phrase::worded("Line %1 of %2 has %3 cells and its heading %4: fill in every column.", values));
}

std::string line_of(const std::vector<std::string>& cells) {
  std::string line;
  for (std::size_t c = 0; c < cells.size(); ++c) {
    if (c > 0) line += ',';
    if (cells[c].find_first_of(",\"\n\r") == std::string::npos) {
      line += cells[c];
      continue;
    }
    line += '"';
    for (const char one : cells[c]) line.append(one == '"' ? 2 : 1, one);
    line += '"';
  }
  return line + "\n";
}

}  // namespace

std::optional<double> number_in_cell(const std::string& cell) {
  double value = 0.0;
  const auto read = std::from_chars(cell.data(), cell.data() + cell.size(), value);
  if (read.ec != std::errc() || read.ptr != cell.data() + cell.size()) return std::nullopt;
  return value;
}

Result<CsvTable> read_csv(const std::filesystem::path& file, const CsvForm& form) {
  const auto bytes = read_file(file);
  if (!bytes) return bytes.problem();
  return csv_of(*bytes, clean_text(file.filename().string()), form);
}

std::string csv_text(const CsvTable& table) {
  std::string text;
  for (const CsvTable::Row& row : table.block) text += line_of(row.cells);
  text += line_of(table.heading);
  for (const CsvTable::Row& row : table.rows) text += line_of(row.cells);
  return text;
}

Result<CsvTable> csv_of(const std::string& bytes, const std::string& name, const CsvForm& form) {
  if (bytes.find('\0') != std::string::npos)
    return bad_input(
        Phrase::worded("%1 holds the character NUL, so it is no CSV text: save it as UTF-8 text with commas.",
                       {name_of(name)}));
  CsvReader reader(bytes);
  CsvTable table;
  while (!reader.at_end()) {
    CsvTable::Row row = reader.next();
    if (reader.quote_open())
      return bad_input(Phrase::worded("A quote that begins in line %1 of %2 never ends: close it.",
                                      {figures_of(row.line), name_of(name)}));
    if (is_empty(row)) continue;
    if (table.heading.empty() && !form.heading_begins.empty() && row.cells.front() != form.heading_begins) {
      drop_empty_end(row.cells);
      table.block.push_back(std::move(row));
      continue;
    }
    if (table.heading.empty()) {
      table.heading = std::move(row.cells);
      table.heading_line = row.line;
      if (auto problem = heading_problem(name, table.heading)) return *problem;
      continue;
    }
    if (row.cells.size() != table.heading.size()) return length_problem(name, row, table.heading.size());
    if (static_cast<int>(table.rows.size()) == form.most_rows)
      return bad_input(
          Phrase::worded("%1 has more than %2 %3, the most that one study takes: split the list.",
                         {name_of(name), figures_of(form.most_rows), name_of(form.rows_are)}));
    table.rows.push_back(std::move(row));
  }
  if (table.heading.empty() && !form.heading_begins.empty())
    return bad_input(Phrase::worded("%1 has no heading that begins with '%2': write one over its columns.",
                                    {name_of(name), name_of(form.heading_begins)}));
  if (table.rows.empty())
    return bad_input(Phrase::worded("%1 lists no %2: write a heading and a row each.",
                                    {name_of(name), name_of(form.rows_are)}));
  return table;
}

}  // namespace wrapgauge
