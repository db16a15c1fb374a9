#include "model/bench/readings_file.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "model/bench/reading_row.hpp"
#include "model/core/clean_text.hpp"
#include "model/core/csv_table.hpp"
#include "model/core/day.hpp"
#include "model/core/file.hpp"
#include "model/core/number_text.hpp"
#include "model/layout/layout_json.hpp"
#include "model/study/random_stream.hpp"

namespace wrapgauge {
namespace {

Problem at_line(const std::string& name, int line, Phrase what) {
  return bad_input(Phrase::worded("%1, line %2: %3", {name_of(name), figures_of(line), std::move(what)}));
}

Phrase cleaned(const std::string& words) {
  return name_of(clean_text(words));
}

// Takes over one row of the block; what is wrong with it otherwise.
class BlockReader {
 public:
  explicit BlockReader(Readings& readings) : readings_(readings) {}

  std::optional<Phrase> take(const std::string& key, const std::string& value) {
    if (!seen_.insert(key).second) return Phrase::worded("'%1' stands twice: keep one.", {cleaned(key)});
    if (key == "plan" || key == "layout") return std::nullopt;  // for people
    if (key == "layout_hash") return said(value, readings_.layout_hash);
    if (key == "predicted_for") return said(value, readings_.predicted_for);
    if (key == "remark") return said(value, readings_.remark);
    if (key == "date") return take_date(value);
    if (key == "part") return take_part(value);
    if (key == "posture") return take_posture(value);
    for (const char* what : {"instrument ", "error_percent "})
      if (key.starts_with(what)) return take_instrument(what, key.substr(std::string(what).size()), value);
    return Phrase::worded(
        "'%1' is no key here; there are plan, layout, layout_hash, predicted_for, date, part, posture, "
        "remark, and 'instrument KIND' and 'error_percent KIND'.",
        {cleaned(key)});
  }

 private:
  static std::optional<Phrase> said(const std::string& value, std::string& into) {
    into = clean_text(value);
    return std::nullopt;
  }
  std::optional<Phrase> take_date(const std::string& value) {
    readings_.date = value;
    if (value.empty() || is_day(value)) return std::nullopt;
    return Phrase::worded("'%1' is no day: write year-month-day, 2026-11-29.", {cleaned(value)});
  }
  std::optional<Phrase> take_part(const std::string& value) {
    readings_.part = body_part_from_name(value);
    if (readings_.part || value.empty()) return std::nullopt;
    return Phrase::worded("the part '%1' is not known; it may be %2.",
                          {cleaned(value), name_of(body_part_names())});
  }
  std::optional<Phrase> take_posture(const std::string& value) {
    if (value == "relaxed") readings_.posture = Posture::kRelaxed;
    if (value == "tense") readings_.posture = Posture::kTense;
    if (readings_.posture || value.empty()) return std::nullopt;
    return Phrase::worded("posture is '%1': write relaxed or tense.", {cleaned(value)});
  }
  std::optional<Phrase> take_instrument(const std::string& what, const std::string& kind_words,
                                        const std::string& value) {
    const auto kind = kind_from_name(kind_words);
    if (!kind) return Phrase::worded("there is no kind '%1'.", {cleaned(kind_words)});
    Instrument& instrument = readings_.instruments[static_cast<std::size_t>(*kind)];
    if (what == "instrument ") return said(value, instrument.words);
    if (value.empty()) return std::nullopt;
    const auto percent = number_in_cell(value);
    if (!percent || *percent < 0.1 || *percent > 100.0)
      return Phrase::worded("the standard error is '%1': write per cent of a reading, 0.1 to 100.",
                            {cleaned(value)});
    instrument.error = 0.01 * *percent;
    instrument.error_is_said = true;
    return std::nullopt;
  }

  Readings& readings_;
  std::set<std::string> seen_;
};

std::optional<Problem> take_block(const CsvTable& table, const std::string& name, Readings& readings) {
  BlockReader block(readings);
  for (const CsvTable::Row& row : table.block) {
    if (row.cells.size() > 2)
      return at_line(name, row.line,
                     Phrase::worded("a row before the table holds a key and one value; put quotes round "
                                    "words with a comma."));
    const std::string value = row.cells.size() > 1 ? row.cells[1] : "";
    if (const auto wrong = block.take(row.cells.front(), value)) return at_line(name, row.line, *wrong);
  }
  return std::nullopt;
}

std::optional<Problem> other_layout(const Readings& readings, const Layout& layout) {
  if (readings.layout_hash.empty())
    return bad_input(
        Phrase::worded("%1 does not say which layout was read: keep the row layout_hash that the "
                       "sheet to fill in comes with.",
                       {name_of(readings.file)}));
  if (readings.layout_hash == layout_hash(layout)) return std::nullopt;
  return bad_input(
      Phrase::worded("%1 holds readings of another layout (%2, the plan's is %3): name the plan "
                     "they were read for, or read this device anew.",
                     {name_of(readings.file), cleaned(readings.layout_hash), name_of(layout_hash(layout))}));
}

std::optional<Problem> rows_problem(const Readings& readings) {
  std::set<std::string> ids;
  int on_person = 0, contact = 0, first_line = 0;
  for (const Reading& row : readings.rows) {
    if (!ids.insert(row.id).second)
      return at_line(
          readings.file, row.line,
          Phrase::worded("the reading '%1' stands twice: delete one, or give a repeated reading an "
                         "id of its own.",
                         {name_of(row.id)}));
    if (row.kind != ReadingKind::kContact) continue;
    if (++contact == 1) first_line = row.line;
    on_person += row.on_person;
  }
  if (on_person > 0 && on_person < contact)
    return bad_input(
        Phrase::worded("%1 mixes contact read on a dummy and on a person, whose tissue differs: "
                       "put them into two files.",
                       {name_of(readings.file)}));
  if (contact > 0 && !readings.part)
    return at_line(
        readings.file, first_line,
        Phrase::worded("contact was read, but not on which part of a body: add a row 'part,forearm' "
                       "before the table."));
  return std::nullopt;
}

}  // namespace

std::string layout_hash(const Layout& layout) {
  return hash_text(layout_to_json(layout).dump());
}

Result<Readings> read_readings(const std::filesystem::path& file, const Layout& layout, UnreadRows unread) {
  const auto bytes = read_file(file);
  if (!bytes) return bytes.problem();
  return readings_of(*bytes, clean_text(file.filename().string()), layout, unread);
}

Readings without_unread(Readings readings) {
  std::erase_if(readings.rows, [](const Reading& row) { return !row.is_read(); });
  return readings;
}

Result<Readings> readings_of(const std::string& bytes, const std::string& name, const Layout& layout,
                             UnreadRows unread) {
  const auto table = csv_of(bytes, name, kReadingsForm);
  if (!table) return table.problem();
  return readings_of(*table, bytes, name, layout, unread);
}

Result<Readings> readings_of(const CsvTable& table, const std::string& bytes, const std::string& name,
                             const Layout& layout, UnreadRows unread) {
  Readings readings;
  readings.file = name;
  readings.hash = hash_text(bytes);
  if (auto problem = take_block(table, readings.file, readings)) return *problem;
  if (auto problem = other_layout(readings, layout)) return *problem;
  for (int k = 0; k < kReadingKinds; ++k)
    if (Instrument& instrument = readings.instruments[static_cast<std::size_t>(k)]; !instrument.error_is_said)
      instrument.error = default_error(static_cast<ReadingKind>(k));
  const ReadingRow rows(table.heading, layout, unread);
  if (const auto wrong = rows.heading_problem()) return at_line(readings.file, table.heading_line, *wrong);
  for (const CsvTable::Row& row : table.rows) {
    Reading reading;
    reading.line = row.line;
    if (const auto wrong = rows.take(row.cells, reading)) return at_line(readings.file, row.line, *wrong);
    reading.error = readings.instrument(reading.kind).error;
    readings.rows.push_back(std::move(reading));
  }
  if (auto problem = rows_problem(readings)) return *problem;
  return readings;
}

}  // namespace wrapgauge
