#pragma once
// Readings as a CSV file: a block of "key,value" rows, then a table whose heading begins with `id`. Described
// in docs/10-bench.md.

#include <filesystem>

#include "model/bench/reading_row.hpp"
#include "model/core/csv_table.hpp"
#include "model/core/result.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

inline constexpr int kMostReadings = 2000;
inline const CsvForm kReadingsForm{kMostReadings, "readings", "id"};

// Changes whenever anything of the layout does.
std::string layout_hash(const Layout& layout);

// `unread`: what becomes of rows whose value is empty. Problems, each with its line: those of read_csv; an
// unknown key, column or word; a value that is empty, not a number, zero or negative; the same value in two
// units; an id twice; a chamber or inlet that the layout does not have; a stretched length below the
// unstretched one; readings of another layout; contact that was read on both a dummy and a person, or whose
// part is not said.
Result<Readings> read_readings(const std::filesystem::path& file, const Layout& layout,
                               UnreadRows unread = UnreadRows::kRefused);
// The same of bytes at hand; `name` is the file's.
Result<Readings> readings_of(const std::string& bytes, const std::string& name, const Layout& layout,
                             UnreadRows unread);
// The same of a table that was read from these bytes.
Result<Readings> readings_of(const CsvTable& table, const std::string& bytes, const std::string& name,
                             const Layout& layout, UnreadRows unread);

// Those rows that were read.
Readings without_unread(Readings readings);

}  // namespace wrapgauge
