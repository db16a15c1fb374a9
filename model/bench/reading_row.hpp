#pragma once
// One row of a readings file, cell by cell.

#include <optional>
#include <string>
#include <vector>

#include "model/bench/reading.hpp"
#include "model/core/phrase.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

// Rows whose value is still to be read: refused, or kept without it.
enum class UnreadRows { kRefused, kKept };

class ReadingRow {
 public:
  // Both must outlive it. `unread`: whether the value that is read may be missing.
  ReadingRow(const std::vector<std::string>& heading, const Layout& layout, UnreadRows unread)
      : heading_(heading), layout_(layout), unread_(unread) {}

  // What is wrong, in one sentence without its place; none: nothing.
  std::optional<Phrase> heading_problem() const;
  std::optional<Phrase> take(const std::vector<std::string>& cells, Reading& reading) const;

 private:
  std::string word(const std::vector<std::string>& cells, const std::string& column) const;
  std::optional<Phrase> take_numbers(const std::vector<std::string>& cells, Reading& reading) const;
  std::optional<Phrase> take_words(const std::vector<std::string>& cells, Reading& reading) const;
  std::optional<Phrase> take_where(const std::string& where, Reading& reading) const;
  std::optional<Phrase> missing(const Reading& reading) const;

  const std::vector<std::string>& heading_;
  const Layout& layout_;
  UnreadRows unread_;
};

}  // namespace wrapgauge
