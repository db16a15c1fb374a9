#include "model/bench/reading_row.hpp"

#include <algorithm>
#include <cmath>

#include "model/bench/reading_columns.hpp"
#include "model/core/clean_text.hpp"
#include "model/core/csv_table.hpp"
#include "model/geometry/polygon.hpp"

namespace wrapgauge {
namespace {

template <class Parts>
std::string names_of(const Parts& parts) {
  std::string names;
  for (const auto& part : parts) names += (names.empty() ? "'" : ", '") + clean_text(part.name) + "'";
  return names;
}

template <class Parts>
bool has_named(const Parts& parts, const std::string& name) {
  return std::any_of(parts.begin(), parts.end(), [&](const auto& part) { return part.name == name; });
}

Phrase cell_name(const std::string& cell) {
  return name_of(clean_text(cell));
}

// One of two words; `into` is whether it is the second.
std::optional<Phrase> one_of(const char* column, const std::string& cell, const char* first,
                             const char* second, bool& into) {
  into = cell == second;
  if (cell.empty() || cell == first || cell == second) return std::nullopt;
  return Phrase::worded("%1 is '%2': write %3 or %4.",
                        {name_of(column), cell_name(cell), name_of(first), name_of(second)});
}

// Of "3.0 kPa (23 mmHg)", SI.
std::optional<double> leading_number(const std::string& cell, ReadingField field) {
  const auto value = number_in_cell(cell.substr(0, cell.find(' ')));
  if (!value || !std::isfinite(*value) || *value <= 0.0) return std::nullopt;
  return *value / field_value(field, 1.0);
}

}  // namespace

std::optional<Phrase> ReadingRow::heading_problem() const {
  for (const std::string& name : heading_) {
    const bool is_word = std::find(kReadingWords.begin(), kReadingWords.end(), name) != kReadingWords.end();
    if (!is_word && !column_named(name))
      return Phrase::worded(
          "the column '%1' is not known; a column says its unit, such as gauge_kpa or gauge_mmhg.",
          {cell_name(name)});
  }
  if (std::find(heading_.begin(), heading_.end(), "kind") == heading_.end())
    return Phrase::worded("there is no column 'kind': say of each reading what was read.");
  return std::nullopt;
}

std::string ReadingRow::word(const std::vector<std::string>& cells, const std::string& column) const {
  const auto at = std::find(heading_.begin(), heading_.end(), column);
  return at == heading_.end() ? "" : cells[static_cast<std::size_t>(at - heading_.begin())];
}

std::optional<Phrase> ReadingRow::take(const std::vector<std::string>& cells, Reading& reading) const {
  reading.id = clean_text(word(cells, "id"));
  if (reading.id.empty()) return Phrase::worded("the reading has no id: give each one of its own.");
  const std::string kind_word = word(cells, "kind");
  const auto kind = kind_from_name(kind_word);
  if (!kind) {
    std::string names;
    for (int k = 0; k < kReadingKinds; ++k)
      names += (k ? ", " : "") + std::string(kind_name(static_cast<ReadingKind>(k)));
    return Phrase::worded("the kind of reading '%1' is '%2': it may be %3.",
                          {name_of(reading.id), cell_name(kind_word), name_of(names)});
  }
  reading.kind = *kind;
  if (auto wrong = take_numbers(cells, reading)) return wrong;
  if (auto wrong = take_words(cells, reading)) return wrong;
  return missing(reading);
}

std::optional<Phrase> ReadingRow::take_numbers(const std::vector<std::string>& cells,
                                               Reading& reading) const {
  for (std::size_t c = 0; c < heading_.size(); ++c) {
    const ReadingColumn* column = column_named(heading_[c]);
    if (!column || cells[c].empty()) continue;
    const std::vector<Phrase> what = {name_of(column->name), name_of(reading.id), cell_name(cells[c])};
    const auto value = number_in_cell(cells[c]);
    if (!value)
      return Phrase::worded(
          "%1 of reading '%2' is '%3': write a number with a point for its decimals; the unit stands in the "
          "heading.",
          what);
    if (!std::isfinite(*value)) return Phrase::worded("%1 of reading '%2' is '%3': write a number.", what);
    if (!column->may_be_zero && *value <= 0.0)
      return Phrase::worded(
          "%1 of reading '%2' is '%3': a reading lies above 0; correct it or delete the row.", what);
    auto& field = reading.si[static_cast<std::size_t>(column->field)];
    if (field)
      return Phrase::worded("reading '%1' gives %2 both: keep one unit.",
                            {name_of(reading.id), name_of(columns_of_field(column->field))});
    field = *value * column->si;
  }
  return std::nullopt;
}

std::optional<Phrase> ReadingRow::take_words(const std::vector<std::string>& cells, Reading& reading) const {
  if (auto wrong = one_of("inlets", word(cells, "inlets"), "own", "all", reading.all_inlets)) return wrong;
  if (auto wrong = one_of("hold", word(cells, "hold"), "free", "clamped", reading.clamped)) return wrong;
  if (auto wrong = one_of("confirmed", word(cells, "confirmed"), "no", "yes", reading.confirmed))
    return wrong;
  const std::string on = word(cells, "on");
  if (auto wrong = one_of("on", on, "dummy", "person", reading.on_person)) return wrong;
  if (reading.kind == ReadingKind::kContact && on.empty())
    return Phrase::worded(
        "contact reading '%1' does not say what it was read on: write dummy or person under 'on'.",
        {name_of(reading.id)});
  if (reading.kind == ReadingKind::kStrip) {
    bool outer = false;
    const std::string sheet = word(cells, "sheet");
    if (auto wrong = one_of("sheet", sheet, "skin", "outer", outer)) return wrong;
    if (sheet.empty())
      return Phrase::worded("strip reading '%1' does not say of which sheet: write skin or outer.",
                            {name_of(reading.id)});
    reading.sheet = outer ? SheetSide::kOuter : SheetSide::kSkin;
  }
  reading.file = word(cells, "file");
  reading.predicted = leading_number(word(cells, "predicted"), read_field(reading.kind));
  return take_where(word(cells, "where"), reading);
}

std::optional<Phrase> ReadingRow::take_where(const std::string& where, Reading& reading) const {
  reading.where = where == "all" ? "" : where;
  if (where == "all") reading.all_inlets = true;
  const auto no_inlet = [&] {
    return Phrase::worded("reading '%1' names the inlet '%2', which the layout does not have; it has %3.",
                          {name_of(reading.id), cell_name(where), name_of(names_of(layout_.inlets))});
  };
  const auto no_chamber = [&] {
    return Phrase::worded("reading '%1' names the chamber '%2', which the layout does not have; it has %3.",
                          {name_of(reading.id), cell_name(where), name_of(names_of(layout_.chambers))});
  };
  switch (reading.kind) {
    case ReadingKind::kFill:
      if (!has_named(layout_.inlets, where)) return no_inlet();
      return std::nullopt;
    case ReadingKind::kContact:
      if (where.empty() && reading.has(ReadingField::kX) && reading.has(ReadingField::kY)) {
        const Vec2 place(reading.value(ReadingField::kX), reading.value(ReadingField::kY));
        if (contains(layout_.outline_m, place)) return std::nullopt;
        return Phrase::worded("the place of reading '%1' lies off the layout: give x_mm and y_mm as drawn.",
                              {name_of(reading.id)});
      }
      [[fallthrough]];
    case ReadingKind::kBulge:
    case ReadingKind::kPlate:
      if (where == "all" && reading.kind == ReadingKind::kPlate) return std::nullopt;
      if (!has_named(layout_.chambers, where)) return no_chamber();
      return std::nullopt;
    default:
      return std::nullopt;
  }
}

std::optional<Phrase> ReadingRow::missing(const Reading& reading) const {
  for (const ReadingField field : needed_fields(reading.kind))
    if (!reading.has(field) && !(unread_ == UnreadRows::kKept && field == read_field(reading.kind)))
      return Phrase::worded("%1 of %2 reading '%3' is empty: fill it in, or delete the row.",
                            {name_of(columns_of_field(field)), name_of(std::string(kind_name(reading.kind))),
                             name_of(reading.id)});
  if (reading.kind == ReadingKind::kStrip &&
      reading.value(ReadingField::kStretched) <= reading.value(ReadingField::kLength))
    return Phrase::worded(
        "strip reading '%1' is no longer under its load (%2) than without (%3): read both between the same "
        "marks.",
        {name_of(reading.id),
         figures_of(field_text(ReadingField::kStretched, reading.value(ReadingField::kStretched))),
         figures_of(field_text(ReadingField::kLength, reading.value(ReadingField::kLength)))});
  if (reading.kind == ReadingKind::kMap && reading.file.empty())
    return Phrase::worded("map reading '%1' names no file with the grid.", {name_of(reading.id)});
  return std::nullopt;
}

}  // namespace wrapgauge
