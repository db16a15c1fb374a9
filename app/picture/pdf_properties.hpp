#pragma once
// What a PDF says about itself and Qt does not write: language, day of making, bookmarks.

#include <string>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

struct PdfBookmark {
  std::string title;
  std::size_t page = 0;  // from 0
  double from_bottom_pt = 0.0;
};

struct PdfProperties {
  std::string title, language;  // "en"
  std::string date;             // "2026-11-29"; empty: none is written
  std::vector<PdfBookmark> bookmarks;
};

// The PDF with an update at its end (ISO 32000-1, 7.5.6): the document's catalogue and information written
// anew. Viewers show the title instead of the file's name. Same input, same bytes. Problem: not a PDF as Qt
// writes it.
Result<std::string> with_properties(std::string pdf, const PdfProperties& properties);

}  // namespace wrapgauge
