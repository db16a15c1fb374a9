#pragma once
// A note broken into pages: rows of text that are never cut, tables whose header stands again on each page.

#include <QImage>
#include <QPainter>
#include <QTextLayout>
#include <memory>
#include <optional>
#include <vector>

#include "app/picture/note_picture.hpp"
#include "model/note/note.hpp"

namespace wrapgauge {

// Lengths on a page are tenths of a point, so that a font of whole units is fine enough.
inline constexpr int kPageDotsPerInch = 720;
inline constexpr int kBodyType = 100, kTitleType = 170, kHeadingType = 125;  // 10, 17 and 12.5 points

// Lines `first` to `last` (not with it) of a text that is laid out in a column.
struct PageText {
  std::shared_ptr<QTextLayout> layout;
  int first = 0, last = 0;

  double height() const;
};

struct PageCell {
  double left = 0.0, width = 0.0;  // within its borders
  PageText text;
  bool fill = false;          // for the study to fill
  double least_height = 0.0;  // room to write
};

enum class RowFrame { kNone, kGrid, kHeader, kBox };

struct PageRow {
  std::vector<PageCell> cells;
  QImage picture;  // across the page, instead of cells
  double picture_height = 0.0;
  RowFrame frame = RowFrame::kNone;
  double gap = 0.0;                   // above it, but not at the top of a page
  bool with_next = false;             // not the last of its page
  std::optional<std::size_t> header;  // row to stand again above it on a new page
  std::optional<QString> heading;     // what a list of contents calls it

  double height() const;
};

struct PlacedRow {
  PageRow row;
  double top = 0.0;
};
using NotePage = std::vector<PlacedRow>;

// The note from its title to its end, for pages of `width`.
std::vector<PageRow> note_rows(const Note& note, const NotePictures& pictures, double width);

// A row that fits no page goes on on the next one, line by line.
std::vector<NotePage> on_pages(const std::vector<PageRow>& rows, double page_height);

void draw_row(const PlacedRow& placed, double width, QPainter& painter);

QFont page_font(int type, bool bold = false);

}  // namespace wrapgauge
